package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.math.BigDecimal;
import java.math.MathContext;

/** The checks on lengths of a cross-section, which say what usually went wrong: the unit. */
final class SectionLength {

  /** No section is wider; such a number was most likely meant in mm. */
  private static final double LARGEST = 20;

  /**
   * Share of a bound by which a length may exceed it through rounding; it is taken as the bound.
   */
  static final double ROUNDING = 1e-9;

  private static final int DIGITS = 6;

  private SectionLength() {}

  static double positive(String part, String field, double length) {
    return below(part, field, length, LARGEST, "");
  }

  static double below(String part, String field, double length, double bound, String whose) {
    if (!(length > 0 && length < bound)) {
      throw new ModelException(
          part, field, length, "above 0 and below " + text(bound) + " m" + whose);
    }
    return length;
  }

  static double upTo(String part, String field, double length, double bound, String whose) {
    if (!(length > 0 && length <= bound * (1 + ROUNDING))) {
      throw new ModelException(
          part, field, length, "above 0 and at most " + text(bound) + " m" + whose);
    }
    return Math.min(length, bound);
  }

  static double orNone(String part, String field, double length, double bound, String whose) {
    if (!(length >= 0 && length <= bound * (1 + ROUNDING))) {
      throw new ModelException(part, field, length, "from 0 to " + text(bound) + " m" + whose);
    }
    return Math.min(length, bound);
  }

  /** A bound as one would write it, without the rounding of a double. */
  static String text(double bound) {
    return BigDecimal.valueOf(bound)
        .round(new MathContext(DIGITS))
        .stripTrailingZeros()
        .toPlainString();
  }
}
