package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.PlainForce.Push;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lists by hand what parts can give, kind after kind. Shares nothing with the library's limits. */
final class PlainParts {

  private final Device device;
  private final double factor;
  private final List<PlainForce> forces = new ArrayList<>();

  private PlainParts(Device device, double factor) {
    this.device = device;
    this.factor = factor;
  }

  /** The forces, with all coefficients of friction times a factor. */
  static List<PlainForce> of(Device device, double factor) {
    PlainParts parts = new PlainParts(device, factor);
    device.connections().forEach(parts::add);
    return parts.forces;
  }

  /** To the right of a push that points up. */
  static Vector tangent(Direction push) {
    return Vector.of(push.y(), -push.x());
  }

  private void add(Connection connection) {
    String name = connection.name();
    String body = connection.bodies().get(0);
    String other = connection.bodies().get(1);
    Point at = device.point(connection.places().get(0));
    if (connection instanceof Pin pin) {
      for (Vector axis : List.of(Vector.of(1, 0), Vector.of(0, 1))) {
        String ask = (axis.x() > 0 ? "x" : "y") + " on " + body;
        pair(name, true, body, other, at, axis, Map.of(ask, 1.0));
      }
      assert pin.bodies().size() == 2;
    } else if (connection instanceof Roller roller) {
      boolean both = roller.sides() == Sides.TWO;
      pair(name, both, body, other, at, roller.push().times(1), Map.of("normal", 1.0));
    } else if (connection instanceof Contact contact) {
      cone(name, body, other, at, contact.push(), contact.friction() * factor, 0);
    } else if (connection instanceof ContactBase base) {
      double half = base.width() / 2;
      for (double arm : new double[] {-half, half}) {
        Point edge = at.plus(tangent(base.push()).times(arm));
        cone(name, body, other, edge, base.push(), base.friction() * factor, arm);
      }
    } else if (connection instanceof Wrap wrap) {
      wrap(wrap);
    } else {
      assert connection instanceof Line || connection instanceof Strut;
      Point end = device.point(connection.places().get(1));
      Vector pull = Direction.from(at, end).times(1);
      boolean pushes = connection instanceof Strut;
      pair(name, pushes, body, other, at, pull, Map.of("tension", 1.0));
    }
  }

  private void pair(
      String name,
      boolean anySign,
      String body,
      String other,
      Point at,
      Vector force,
      Map<String, Double> reads) {
    List<Push> pushes = List.of(new Push(body, at, force), new Push(other, at, force.times(-1)));
    forces.add(new PlainForce(name, anySign, pushes, reads));
  }

  /** Both edges of a cone of friction; one force if there is none. */
  private void cone(
      String name, String body, String other, Point at, Direction push, double mu, double arm) {
    Vector normal = push.times(1);
    Vector along = tangent(push);
    for (int side = mu > 0 ? -1 : 1; side <= 1; side += 2) {
      Vector edge = normal.plus(along.times(side * mu));
      Map<String, Double> reads = Map.of("normal", 1.0, "friction", side * mu, "couple", arm);
      pair(name, false, body, other, at, edge, reads);
    }
  }

  /** A straight part of a rope between two stops. */
  record Straight(Stop from, Point leaves, Stop to, Point reaches) {

    Direction along() {
      return Direction.from(leaves, reaches);
    }

    List<Push> pushes(double tension) {
      Vector pull = along().times(tension);
      return List.of(
          new Push(from.body(), leaves, pull), new Push(to.body(), reaches, pull.times(-1)));
    }
  }

  /** From a plain end to where the rope touches the post. */
  static Straight before(Device device, Wrap wrap) {
    Point touches = touches(device, wrap.first(), wrap.post(), wrap.post().turn().sign());
    return new Straight(wrap.first(), device.point(wrap.first().at()), wrap.post(), touches);
  }

  /** From where the rope leaves the post to a plain end. */
  static Straight after(Device device, Wrap wrap) {
    Point leaves = touches(device, wrap.last(), wrap.post(), -wrap.post().turn().sign());
    return new Straight(wrap.post(), leaves, wrap.last(), device.point(wrap.last().at()));
  }

  /**
   * Where the tangent from a point touches a circle: at acos(r/d) from the line to the point, on
   * the side on which the rope comes in.
   */
  private static Point touches(Device device, Stop end, Stop post, int sense) {
    Point centre = device.point(post.at());
    Point from = device.point(end.at());
    double angle = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
    double at = angle + sense * Math.acos(post.radius() / centre.distance(from));
    return centre.plus(Vector.of(Math.cos(at), Math.sin(at)).times(post.radius()));
  }

  /** Angle of contact: from where the rope touches to where it leaves, in the sense of the turn. */
  private double angle(Wrap wrap) {
    Point centre = device.point(wrap.post().at());
    Point in = before(device, wrap).reaches();
    Point out = after(device, wrap).leaves();
    double from = Math.atan2(in.y() - centre.y(), in.x() - centre.x());
    double to = Math.atan2(out.y() - centre.y(), out.x() - centre.x());
    double turned = wrap.post().turn().sign() * (to - from);
    while (turned < 0) {
      turned += 2 * Math.PI;
    }
    return turned % (2 * Math.PI) + 2 * Math.PI * wrap.extraTurns();
  }

  private void wrap(Wrap wrap) {
    double most = Math.exp(wrap.friction() * factor * angle(wrap));
    Straight in = before(device, wrap);
    Straight out = after(device, wrap);
    for (int side = 0; side < 2; side++) {
      double first = side == 0 ? 1 : 1 / most;
      double last = side == 0 ? 1 / most : 1;
      List<Push> pushes = new ArrayList<>(in.pushes(first));
      pushes.addAll(out.pushes(last));
      Map<String, Double> reads = Map.of("tension", first, "end tension", last);
      forces.add(new PlainForce(wrap.name(), false, pushes, reads));
    }
  }
}
