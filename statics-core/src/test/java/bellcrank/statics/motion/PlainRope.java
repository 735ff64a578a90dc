package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/** The run of a rope over round sheaves by tangents of circles and arcs between them. */
final class PlainRope {

  private final List<Stop> stops;
  private final List<Vector> ways = new ArrayList<>();
  private final List<Point> starts = new ArrayList<>();
  private double length;

  private PlainRope(Device device, Pose pose, List<Stop> stops) {
    this.stops = stops;
    for (int i = 0; i + 1 < stops.size(); i++) {
      Stop a = stops.get(i);
      Stop b = stops.get(i + 1);
      Point from = pose.frame(a.body()).apply(device.point(a.at()));
      Vector centres = from.to(pose.frame(b.body()).apply(device.point(b.at())));
      // both circles are touched on the side of their turn: an offset to the left of the run
      double offset = side(b) - side(a);
      double run = Math.sqrt(centres.dot(centres) - offset * offset);
      double angle = Math.atan2(centres.y(), centres.x()) - Math.atan2(offset, run);
      Vector way = Direction.ofAngle(angle).times(1);
      ways.add(way);
      starts.add(from.plus(way.perpendicular().times(-side(a))));
      length += run;
      if (i > 0) {
        Vector before = ways.get(i - 1);
        double turned = Math.atan2(before.cross(way), before.dot(way)) * Math.signum(side(a));
        length += a.radius() * (turned < 0 ? turned + 2 * Math.PI : turned);
      }
    }
  }

  static PlainRope of(Device device, Pose pose, List<Stop> stops) {
    return new PlainRope(device, pose, stops);
  }

  private static double side(Stop stop) {
    return stop.turn() == Turn.COUNTER_CLOCKWISE ? stop.radius() : -stop.radius();
  }

  double length() {
    return length;
  }

  /** Arm in m about a place of the pull of a rope of unit tension on a body. */
  double arm(String body, Point about) {
    double arm = 0;
    for (int i = 0; i < ways.size(); i++) {
      double pull = about.to(starts.get(i)).cross(ways.get(i));
      if (stops.get(i).body().equals(body)) {
        arm += pull;
      }
      if (stops.get(i + 1).body().equals(body)) {
        arm -= pull;
      }
    }
    return arm;
  }
}
