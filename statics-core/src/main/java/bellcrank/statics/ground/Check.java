package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/** The checks that the types of this package make on their own fields. */
final class Check {

  /** Bound on any number in SI units; far beyond it products would overflow. */
  private static final double LARGEST = 1e30;

  /** Steeper than any soil; a larger number is most likely in degrees. */
  private static final double STEEPEST = Math.PI / 3;

  private Check() {}

  static double finite(String part, String field, double value) {
    if (!(Math.abs(value) <= LARGEST)) {
      throw new ModelException(part, field, value, "a finite number within ±" + LARGEST);
    }
    return value + 0.0;
  }

  static double positive(String part, String field, double value) {
    if (!(finite(part, field, value) > 0)) {
      throw new ModelException(part, field, value, "a number above 0");
    }
    return value;
  }

  static double notNegative(String part, String field, double value) {
    if (finite(part, field, value) < 0) {
      throw new ModelException(part, field, value, "0 or more");
    }
    return value + 0.0;
  }

  static void notNegative(String part, String field, Optional<Span> span) {
    if (span.isPresent()) {
      notNegative(part, field, span.get().low());
    }
  }

  static double frictionAngle(String part, double value) {
    if (!(value >= 0 && value <= STEEPEST)) {
      throw new ModelException(part, "friction angle", value, "an angle in rad from 0 to π/3");
    }
    return value + 0.0;
  }

  static void text(String part, String field, String value) {
    if (value.isBlank() || !value.equals(value.strip())) {
      throw new ModelException(part, field, '"' + value + '"', "a text without outer blanks");
    }
  }
}
