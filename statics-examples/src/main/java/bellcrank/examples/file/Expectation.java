package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.harness.ExpectedAnswer;
import java.util.Optional;

/**
 * An answer that a file expects.
 *
 * @param ask what is asked
 * @param value what it should be answered with
 * @param digits significant digits to which an amount must hold, in its own unit, 1 to 15; 0 for
 *     words, which must hold as they are
 * @param source where the value comes from, if the file as a whole does not say
 * @param printed what the source prints, as text, where statics contradicts it
 * @param reason why the printed value differs
 */
public record Expectation(
    Ask ask,
    Expected value,
    int digits,
    Optional<String> source,
    Optional<String> printed,
    Optional<String> reason) {

  /** Most digits that a value is printed with. */
  static final int MOST_DIGITS = 15;

  /**
   * Checks the fields.
   *
   * @param ask what is asked
   * @param value what it should be answered with
   * @param digits significant digits, 1 to 15; 0 for words
   * @param source where the value comes from
   * @param printed what the source prints where statics contradicts it
   * @param reason why the printed value differs
   * @throws ModelException if the digits are out of range or a text is empty
   */
  public Expectation {
    boolean words = value instanceof Expected.Words;
    if (words ? digits != 0 : digits < 1 || digits > MOST_DIGITS) {
      throw new ModelException(
          ask.text(), "digits", digits, words ? "none for words" : "1 to " + MOST_DIGITS);
    }
    source = FreeText.check("source", source);
    printed = FreeText.check("printed", printed);
    reason = FreeText.check("reason", reason);
  }

  /**
   * What is expected, without where it comes from.
   *
   * @return the ask with its value
   */
  public ExpectedAnswer answer() {
    return new ExpectedAnswer(
        ask,
        value instanceof Expected.Amount amount
            ? new ExpectedAnswer.Amount(amount.quantity(), amount.unit(), digits)
            : new ExpectedAnswer.Words(((Expected.Words) value).text()));
  }
}
