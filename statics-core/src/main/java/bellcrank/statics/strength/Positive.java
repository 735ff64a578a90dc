package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/** The check that most numbers of this package need. */
final class Positive {

  private Positive() {}

  static void check(String part, String field, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new ModelException(part, field, value, "a number above 0");
    }
  }

  static void orZero(String part, String field, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new ModelException(part, field, value, "0 or more");
    }
  }
}
