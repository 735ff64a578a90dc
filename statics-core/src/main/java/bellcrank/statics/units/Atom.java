package bellcrank.statics.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit written as one symbol, which may be a factor of a compound unit.
 *
 * @param value the SI value, exact or to 40 digits, so that products are rounded only once
 */
record Atom(String symbol, BigDecimal value, Powers powers, String source) {
  static final MathContext PRECISE = new MathContext(40);

  /** Whether the unit contains mass; such a factor (a force) is written first in a compound. */
  boolean leads() {
    return powers.mass() != 0;
  }
}
