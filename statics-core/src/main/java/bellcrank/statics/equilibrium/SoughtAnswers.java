package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.internal.ForceSum;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;

/** Reads the answers of a sought effort. */
final class SoughtAnswers {

  private final Device device;
  private final Pose pose;
  private final Solved solved;

  SoughtAnswers(Device device, Pose pose, Solved solved) {
    this.device = device;
    this.pose = pose;
    this.solved = solved;
  }

  Answer answer(Sought sought, Ask ask) {
    int column = solved.assembly().soughtColumn(sought.name());
    Measure measure = ask.measure();
    if (measure == Measure.MASS || measure == Measure.VALUE) {
      if (sought.want() != Sought.Want.COMPONENTS) {
        return value(sought, column);
      }
      measure = Measure.SIZE;
    }
    Point at = pose.frame(sought.body()).apply(sought.at().map(device::point).orElse(Point.ORIGIN));
    ForceSum sum = new ForceSum(solved, ask.about().map(device::point).orElse(at));
    sum.addSought(sought.name());
    return ForceMeasures.of(sum, measure, solved.forceScale());
  }

  private Answer value(Sought sought, int column) {
    boolean determined = solved.determined(column);
    return switch (sought.want()) {
      case MASS -> mass(column, determined);
      case INTENSITY ->
          Values.of(
              solved.unknown(column) / length(device, sought),
              Dimension.FORCE_PER_LENGTH,
              determined);
      case COUPLE ->
          Values.of(solved.unknown(column) * device.size(), Dimension.MOMENT, determined);
      default -> Values.of(solved.unknown(column), Dimension.FORCE, determined);
    };
  }

  /** Length in m of the segment along which an intensity is sought. */
  static double length(Device device, Sought sought) {
    return device
        .point(sought.at().orElseThrow())
        .distance(device.point(sought.to().orElseThrow()));
  }

  private Answer mass(int column, boolean determined) {
    double g = device.gravity().norm();
    return g == 0
        ? Values.notDefined("there is no gravity, so a mass has no weight")
        : Values.of(solved.unknown(column) / g, Dimension.MASS, determined);
  }
}
