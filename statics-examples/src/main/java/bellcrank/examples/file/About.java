package bellcrank.examples.file;

import java.util.Optional;

/**
 * What a device file says about itself. Blanks at the ends of a text are dropped.
 *
 * @param statement what is given and asked
 * @param source where the problem comes from
 * @param licence licence of that source
 * @param basis how the expected values were found, such as {@code printed}
 * @param note remarks
 */
public record About(
    Optional<String> statement,
    Optional<String> source,
    Optional<String> licence,
    Optional<String> basis,
    Optional<String> note) {

  /** Nothing said. */
  public static final About NOTHING =
      new About(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Checks the texts.
   *
   * @param statement what is given and asked
   * @param source where the problem comes from
   * @param licence licence of that source
   * @param basis how the expected values were found
   * @param note remarks
   * @throws bellcrank.statics.device.ModelException if a text is empty or has control characters
   *     other than line breaks and tabs
   */
  public About {
    statement = FreeText.check("statement", statement);
    source = FreeText.check("source", source);
    licence = FreeText.check("licence", licence);
    basis = FreeText.check("basis", basis);
    note = FreeText.check("note", note);
  }
}
