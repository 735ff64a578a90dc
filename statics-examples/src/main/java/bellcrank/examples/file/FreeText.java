package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/** Free texts about a file: any text with something in it and without control characters. */
final class FreeText {

  private FreeText() {}

  /** The text without blanks at its ends. */
  static String check(String field, String text) {
    String stripped = text.strip();
    boolean printable =
        stripped
            .codePoints()
            .allMatch(
                c ->
                    c == '\n'
                        || c == '\t'
                        || (!Character.isISOControl(c)
                            && Character.getType(c) != Character.SURROGATE));
    if (stripped.isEmpty() || !printable) {
      throw new ModelException(
          "file",
          field,
          stripped.isEmpty() ? "empty" : '"' + stripped + '"',
          "a text without control characters");
    }
    return stripped;
  }

  static Optional<String> check(String field, Optional<String> text) {
    return text.map(one -> check(field, one));
  }
}
