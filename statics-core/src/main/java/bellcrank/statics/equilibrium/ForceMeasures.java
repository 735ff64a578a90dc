package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.internal.ForceSum;
import bellcrank.statics.units.Dimension;

/** The measures that every force has: components, size, direction, couple and moment. */
final class ForceMeasures {

  private ForceMeasures() {}

  static Answer of(ForceSum sum, Measure measure, double scale) {
    boolean both = sum.xDetermined() && sum.yDetermined();
    return switch (measure) {
      case X -> Values.of(sum.fx(), Dimension.FORCE, sum.xDetermined());
      case Y -> Values.of(sum.fy(), Dimension.FORCE, sum.yDetermined());
      case COUPLE, MOMENT -> Values.of(sum.moment(), Dimension.MOMENT, sum.momentDetermined());
      case DIRECTION ->
          both ? Values.direction(sum.fx(), sum.fy(), scale) : Values.of(0, Dimension.ANGLE, false);
      default -> Values.of(Math.hypot(sum.fx(), sum.fy()), Dimension.FORCE, both);
    };
  }
}
