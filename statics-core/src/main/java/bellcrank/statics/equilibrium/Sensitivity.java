package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Point;
import java.util.Map;
import java.util.Optional;

/** Finds the point whose small move changes the forces most. */
final class Sensitivity {

  private static final double MOVE = 1e-3;
  private static final int MOST_POINTS = 200;

  private Sensitivity() {}

  static Optional<NearCritical> worst(Device device, LoadCase loadCase, Pose pose, Solved solved) {
    NearCritical worst = new NearCritical("", 0, -1);
    int tried = 0;
    double move = MOVE * device.size();
    for (Map.Entry<String, Point> named : device.points().entrySet()) {
      if (tried++ >= MOST_POINTS) {
        break;
      }
      for (int axis = 0; axis < 2; axis++) {
        Point place = named.getValue();
        Point moved = Point.of(place.x() + (1 - axis) * move, place.y() + axis * move);
        double change = change(device, place, moved, loadCase, pose, solved);
        if (change > worst.change()) {
          worst = new NearCritical(named.getKey(), move, change);
        }
      }
    }
    return worst.change() < 0 ? Optional.empty() : Optional.of(worst);
  }

  private static double change(
      Device device, Point place, Point moved, LoadCase loadCase, Pose pose, Solved solved) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    // points that coincide move together, so that connections stay connected
    device.points().forEach((name, p) -> builder.point(name, p.equals(place) ? moved : p));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    device.connections().forEach(builder::connect);
    device.loads().forEach(builder::load);
    if (!builder.problems().isEmpty()) {
      return -1;
    }
    Solved other = Solved.of(builder.build(), loadCase, pose);
    if (!other.balanced()) {
      return Double.POSITIVE_INFINITY;
    }
    double change = 0;
    for (int column = 0; column < solved.assembly().columns(); column++) {
      if (solved.determined(column) && other.determined(column)) {
        change = Math.max(change, Math.abs(other.unknown(column) - solved.unknown(column)));
      }
    }
    return solved.forceScale() > 0 ? change / solved.forceScale() : 0;
  }
}
