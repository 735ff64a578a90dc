package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;

/** The checks that drums, winches and deflections make on their own fields. */
final class HaulCheck {

  /** Far beyond any rope or winch; within these bounds no result overflows or turns to zero. */
  private static final double LARGEST = 1e15;

  private static final double SMALLEST = 1e-15;

  private HaulCheck() {}

  static double positive(String part, String field, double value) {
    if (!(value >= SMALLEST && value <= LARGEST)) {
      throw new ModelException(
          part,
          field,
          value,
          value > 0 ? "a number from " + SMALLEST + " to " + LARGEST : "a number above 0");
    }
    return value;
  }

  static double notNegative(String part, String field, double value) {
    if (!(value >= 0 && value <= LARGEST)) {
      throw new ModelException(
          part, field, value, value > 0 ? "0 or more, at most " + LARGEST : "0 or more");
    }
    return value + 0.0;
  }

  static double signed(String part, String field, double value) {
    if (!(Math.abs(value) <= LARGEST)) {
      throw new ModelException(part, field, value, "a finite number within ±" + LARGEST);
    }
    return value + 0.0;
  }

  static void count(String part, String field, int value, int least, int most) {
    if (value < least || value > most) {
      throw new ModelException(part, field, value, "a whole number from " + least + " to " + most);
    }
  }
}
