package bellcrank.statics.equilibrium;

import bellcrank.statics.units.Dimension;

/** Makes answers from numbers. */
final class Values {

  private Values() {}

  static Answer of(double value, Dimension dimension, boolean determined) {
    return determined
        ? new Answer.Value(value + 0.0, dimension)
        : new Answer.Unanswered(
            Answer.Reason.UNDETERMINED,
            "statics alone does not fix it: there are more unknown forces than equations");
  }

  static Answer notDefined(String why) {
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }

  /** Direction of a force in rad, 0 to 2π; not defined for a force that is zero to rounding. */
  static Answer direction(double fx, double fy, double scale) {
    if (Math.hypot(fx, fy) <= 1e-12 * scale || (fx == 0 && fy == 0)) {
      return notDefined("a force of zero has no direction");
    }
    double angle = Math.atan2(fy, fx);
    return new Answer.Value(angle < 0 ? angle + 2 * Math.PI : angle + 0.0, Dimension.ANGLE);
  }
}
