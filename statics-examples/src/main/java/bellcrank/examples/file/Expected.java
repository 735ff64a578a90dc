package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;

/** What an ask should be answered with. */
public sealed interface Expected permits Expected.Amount, Expected.Words {

  /**
   * A value.
   *
   * @param quantity the value in SI, with its kind
   * @param unit the unit in which the file writes it and in which its digits count; of the same
   *     kind
   */
  record Amount(Quantity quantity, Unit unit) implements Expected {

    /**
     * Checks that the value can be written in the unit.
     *
     * @param quantity the value in SI, with its kind
     * @param unit the unit in which the file writes it
     * @throws ModelException if the unit is of another kind, or is so large or small that a double
     *     cannot hold the number of units
     */
    public Amount {
      if (unit.dimension() != quantity.dimension()) {
        throw new ModelException(
            "file", "value", unit.symbol(), "a unit that measures " + quantity.dimension().noun());
      }
      if (!isNumberOf(unit, quantity.si())) {
        throw new ModelException(
            "file",
            "value",
            quantity.si() + " in SI",
            "a size that is between about 1e-300 and 1e300 in " + unit.symbol() + " as well");
      }
    }

    private static boolean isNumberOf(Unit unit, double si) {
      try {
        return si == 0 || unit.fromSi(si) != 0;
      } catch (QuantityException e) {
        return false;
      }
    }
  }

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
     * @throws ModelException if it is empty or has control characters
     */
    public Words {
      text = FreeText.check("value", text);
    }
  }
}
