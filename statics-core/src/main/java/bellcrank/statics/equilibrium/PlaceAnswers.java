package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Subject;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;

/** Reads places of points and lengths of parts from the pose; no force is needed for them. */
final class PlaceAnswers {

  private static final double WHOLE_TURN = 2 * Math.PI;

  /** An arc this near to a whole turn is none, but for rounding. */
  private static final double ROUNDING = 1e-9;

  private final Device device;
  private final Pose pose;

  PlaceAnswers(Device device, Pose pose) {
    this.device = device;
    this.pose = pose;
  }

  Answer point(Subject.Spot spot, Ask ask) {
    List<String> owners = device.bodiesAt(spot.point());
    String body = ask.on().orElseGet(() -> owners.isEmpty() ? Ground.NAME : owners.get(0));
    Point at = place(pose, body, spot.point());
    return length(ask.measure() == Measure.X ? at.x() : at.y());
  }

  Answer length(Connection connection) {
    if (connection instanceof Reeving reeving) {
      return length(rope(reeving));
    }
    List<String> bodies = connection.bodies();
    List<String> places = connection.places();
    return length(
        place(pose, bodies.get(0), places.get(0))
            .distance(place(pose, bodies.get(1), places.get(1))));
  }

  private static Answer length(double metres) {
    return new Answer.Value(metres + 0.0, Dimension.LENGTH);
  }

  private Point place(Pose at, String body, String point) {
    return at.frame(body).apply(device.point(point));
  }

  /** Straight parts and the arcs on sheaves between them, off the drums at its ends. */
  private double rope(Reeving reeving) {
    List<Stop> stops = reeving.stops();
    double sum = 0;
    for (int i = 1; i < stops.size(); i++) {
      Stop from = stops.get(i - 1);
      Stop to = stops.get(i);
      sum += tangent(centres(from, to, pose), gap(from, to));
      if (i > 1) {
        sum += from.radius() * arc(stops.get(i - 2), from, to);
      }
    }
    return sum;
  }

  private Vector centres(Stop from, Stop to, Pose at) {
    return place(at, from.body(), from.at()).to(place(at, to.body(), to.at()));
  }

  private static double gap(Stop from, Stop to) {
    return from.turn().sign() * from.radius() - to.turn().sign() * to.radius();
  }

  private static double tangent(Vector centres, double gap) {
    return Math.sqrt(Math.max(0, centres.dot(centres) - gap * gap));
  }

  private double direction(Stop from, Stop to, Pose at) {
    Vector centres = centres(from, to, at);
    double gap = gap(from, to);
    return Math.atan2(centres.y(), centres.x()) + Math.atan2(gap, tangent(centres, gap));
  }

  /**
   * Angle on a sheave: as drawn less than a whole turn, from there on as the straight parts turn,
   * so that it does not jump where they pass one another.
   */
  private double arc(Stop before, Stop sheave, Stop after) {
    int sign = sheave.turn().sign();
    double in = direction(before, sheave, Pose.DRAWN);
    double out = direction(sheave, after, Pose.DRAWN);
    double drawn = sign * (out - in);
    drawn -= WHOLE_TURN * Math.floor(drawn / WHOLE_TURN);
    drawn = drawn > WHOLE_TURN - ROUNDING ? 0 : drawn;
    double turned = direction(sheave, after, pose) - out - (direction(before, sheave, pose) - in);
    turned -= WHOLE_TURN * Math.rint(turned / WHOLE_TURN);
    return drawn + sign * turned;
  }
}
