package bellcrank.statics.harness;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/**
 * A limit that a test states.
 *
 * @param text as it was written
 * @param si its value in SI
 * @param unit the unit in which it was written
 */
record StatedBound(String text, double si, Unit unit) {

  /** Share of a limit, or of the loads for a limit of zero, by which an answer may miss it. */
  static final double ROUNDING = 1e-9;

  /**
   * Reads a limit.
   *
   * @param what what is limited, for the message
   * @param text a quantity; without a unit it is in that of the system
   */
  static StatedBound parse(String what, String text, Dimension dimension, UnitSystem units) {
    try {
      Quantity quantity = Quantity.parse(text, dimension, units);
      Unit unit = Quantity.unitOf(text, dimension, units);
      boolean bare = dimension != Dimension.NUMBER && text.strip().matches("[-+0-9./eE ]+");
      String shown = bare ? text.strip() + " " + unit.symbol() : text.strip();
      return new StatedBound(shown, quantity.si(), unit);
    } catch (QuantityException e) {
      throw new ModelException(
          what, "limit", '"' + text + '"', dimension.noun() + "; " + e.getMessage());
    }
  }

  /** What an answer may miss it by and still keep it. */
  double room(LoadScale scale) {
    double size = si == 0 ? scale.of(unit.dimension()) : Math.abs(si);
    return ROUNDING * size;
  }
}
