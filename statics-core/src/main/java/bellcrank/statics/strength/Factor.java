package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/**
 * A factor by which a strength is divided.
 *
 * @param value 1 or another number above 0
 * @param meaning what it covers, such as {@code safety factor on yielding}
 */
public record Factor(double value, String meaning) {

  /**
   * Checks the number.
   *
   * @param value a number above 0
   * @param meaning what it covers
   * @throws ModelException if the value is not finite or not above 0
   */
  public Factor {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new ModelException(meaning, "factor", value, "a number above 0");
    }
  }
}
