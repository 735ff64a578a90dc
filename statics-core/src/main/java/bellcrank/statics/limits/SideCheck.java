package bellcrank.statics.limits;

import bellcrank.statics.device.Force;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Vector;

/** The checks that the parts of a side view make on their own fields. */
final class SideCheck {

  private SideCheck() {}

  /** A name that a part of a device may have; forces know the rule. */
  static String name(String name) {
    return new Force(name, "", "", Vector.ZERO).name();
  }

  static double finite(String part, String field, double value) {
    if (!(Math.abs(value) <= 1e30)) {
      throw new ModelException(part, field, value, "a finite number within ±1.0E30");
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

  /** An angle from upright. */
  static double tilt(String part, String field, double value) {
    if (!(Math.abs(value) < Math.PI / 2)) {
      throw new ModelException(part, field, value, "an angle in rad between -π/2 and π/2");
    }
    return value + 0.0;
  }
}
