package bellcrank.examples.file;

import bellcrank.statics.units.Quantity;

/** What an ask should be answered with. */
public sealed interface Expected permits Expected.Amount, Expected.Words {

  /**
   * A value.
   *
   * @param quantity the value in SI, with its kind
   */
  record Amount(Quantity quantity) implements Expected {}

  /**
   * A text, such as {@code no balance} for the ask {@code outcome}. Blanks at its ends are dropped.
   *
   * @param text the text
   */
  record Words(String text) implements Expected {

    /**
     * Checks the text.
     *
     * @param text the text
     * @throws bellcrank.statics.device.ModelException if it is empty or has control characters
     */
    public Words {
      text = FreeText.check("value", text);
    }
  }
}
