package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.PlainUnknown.Push;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Lists by hand, kind after kind, which forces a connection carries. Knows no matrix. */
final class PlainConnections {

  /** Marks a pin's name as that of a particle. */
  static final String PIN = "pin ";

  private final Device device;
  private final Pose pose;
  private final List<PlainUnknown> unknowns = new ArrayList<>();

  private PlainConnections(Device device, Pose pose) {
    this.device = device;
    this.pose = pose;
  }

  static List<PlainUnknown> of(Device device, Pose pose) {
    PlainConnections plain = new PlainConnections(device, pose);
    device.connections().forEach(plain::connection);
    device.sought().forEach(plain::sought);
    return plain.unknowns;
  }

  private Point at(String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  private void connection(Connection connection) {
    String name = connection.name();
    if (connection instanceof Pin pin) {
      pin(pin);
    } else if (connection instanceof Clamp clamp) {
      Point p = at(clamp.body(), clamp.at());
      between(name + ".x", name, clamp.body(), clamp.other(), p, 1, 0, 0);
      between(name + ".y", name, clamp.body(), clamp.other(), p, 0, 1, 0);
      between(name + ".couple", name, clamp.body(), clamp.other(), p, 0, 0, device.size());
    } else if (connection instanceof Roller roller) {
      Direction push = pose.frame(roller.other()).apply(roller.push());
      normal(name, roller.body(), roller.other(), roller.at(), push);
    } else if (connection instanceof Slot slot) {
      Direction along = pose.frame(slot.other()).apply(slot.along());
      normal(name, slot.body(), slot.other(), slot.at(), along.perpendicular());
    } else if (connection instanceof Guide guide) {
      Direction along = pose.frame(guide.other()).apply(guide.along());
      normal(name, guide.body(), guide.other(), guide.at(), along.perpendicular());
      Point p = at(guide.body(), guide.at());
      between(name + ".couple", name, guide.body(), guide.other(), p, 0, 0, device.size());
    } else if (connection instanceof Contact contact) {
      Direction push = pose.frame(contact.other()).apply(contact.push());
      normal(name, contact.body(), contact.other(), contact.at(), push);
      if (contact.friction() > 0) {
        friction(name, contact.body(), contact.other(), contact.at(), push);
      }
    } else if (connection instanceof ContactBase base) {
      Direction push = pose.frame(base.other()).apply(base.push());
      normal(name, base.body(), base.other(), base.at(), push);
      if (base.friction() > 0) {
        friction(name, base.body(), base.other(), base.at(), push);
      }
      Point p = at(base.body(), base.at());
      between(name + ".couple", name, base.body(), base.other(), p, 0, 0, device.size());
    } else if (connection instanceof Reeving reeving) {
      reeving(reeving);
    } else if (connection instanceof Wrap wrap) {
      wrap(wrap);
    } else {
      axial(connection);
    }
  }

  /** A pin is a particle of its own here, always; the force on each body is an unknown. */
  private void pin(Pin pin) {
    for (String body : pin.bodies()) {
      Point p = at(body, pin.at());
      String ask = pin.name() + "%s on " + body;
      between(ask.formatted(".x"), pin.name(), body, PIN + pin.name(), p, 1, 0, 0);
      between(ask.formatted(".y"), pin.name(), body, PIN + pin.name(), p, 0, 1, 0);
    }
  }

  private void normal(String name, String body, String other, String at, Direction push) {
    between(name + ".normal", name, body, other, at(body, at), push.x(), push.y(), 0);
  }

  private void friction(String name, String body, String other, String at, Direction push) {
    // to the right of a push that points up
    between(name + ".friction", name, body, other, at(body, at), push.y(), -push.x(), 0);
  }

  private void between(
      String ask,
      String part,
      String body,
      String other,
      Point p,
      double fx,
      double fy,
      double couple) {
    List<Push> pair =
        List.of(
            new Push(body, p.x(), p.y(), fx, fy, couple),
            new Push(other, p.x(), p.y(), -fx, -fy, -couple));
    unknowns.add(new PlainUnknown(ask, part, false, couple == 0 ? 1 : couple, pair, pair));
  }

  private void axial(Connection connection) {
    String first = connection.bodies().get(0);
    String second = connection.bodies().get(1);
    Point p = at(first, connection.places().get(0));
    Point q = at(second, connection.places().get(1));
    Direction u = Direction.from(p, q);
    List<Push> pair =
        List.of(
            new Push(first, p.x(), p.y(), u.x(), u.y(), 0),
            new Push(second, q.x(), q.y(), -u.x(), -u.y(), 0));
    String name = connection.name();
    unknowns.add(new PlainUnknown(name + ".tension", name, false, 1, pair, pair));
  }

  /** Where the straight part between two stops leaves the one and reaches the other. */
  private record Straight(Point leaves, Point reaches, Direction along) {}

  private Straight straight(Stop from, Stop to) {
    Point p = at(from.body(), from.at());
    Point q = at(to.body(), to.at());
    double r1 = from.turn().sign() * from.radius();
    double r2 = to.turn().sign() * to.radius();
    double angle = Math.atan2(q.y() - p.y(), q.x() - p.x()) - Math.asin((r2 - r1) / p.distance(q));
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    // a wheel that is run round counter-clockwise lies to the left of the rope
    return new Straight(
        Point.of(p.x() + r1 * s, p.y() - r1 * c),
        Point.of(q.x() + r2 * s, q.y() - r2 * c),
        Direction.from(c, s));
  }

  private void reeving(Reeving reeving) {
    List<Push> forces = new ArrayList<>();
    List<Push> motions = new ArrayList<>();
    double tension = 1;
    for (int i = 1; i < reeving.stops().size(); i++) {
      Stop from = reeving.stops().get(i - 1);
      Stop to = reeving.stops().get(i);
      Straight part = straight(from, to);
      double x = part.along().x();
      double y = part.along().y();
      forces.add(push(from.body(), part.leaves(), tension * x, tension * y));
      forces.add(push(to.body(), part.reaches(), -tension * x, -tension * y));
      // a free sheave turns as it likes: only its centre counts for the length of the rope
      Point start = from.kind() == Stop.Kind.SHEAVE ? at(from.body(), from.at()) : part.leaves();
      Point end = to.kind() == Stop.Kind.SHEAVE ? at(to.body(), to.at()) : part.reaches();
      motions.add(push(from.body(), start, x, y));
      motions.add(push(to.body(), end, -x, -y));
      if (reeving.hauling() == Reeving.Hauling.RAISING) {
        tension *= reeving.efficiency();
      } else if (reeving.hauling() == Reeving.Hauling.LOWERING) {
        tension /= reeving.efficiency();
      }
    }
    String name = reeving.name();
    unknowns.add(new PlainUnknown(name + ".tension", name, false, 1, forces, motions));
  }

  private void wrap(Wrap wrap) {
    rope(wrap.name() + ".tension", wrap.name(), wrap.first(), wrap.post());
    rope(wrap.name() + ".end tension", wrap.name(), wrap.post(), wrap.last());
  }

  private void rope(String ask, String name, Stop from, Stop to) {
    Straight part = straight(from, to);
    double x = part.along().x();
    double y = part.along().y();
    List<Push> pair =
        List.of(push(from.body(), part.leaves(), x, y), push(to.body(), part.reaches(), -x, -y));
    unknowns.add(new PlainUnknown(ask, name, false, 1, pair, pair));
  }

  private static Push push(String body, Point p, double fx, double fy) {
    return new Push(body, p.x(), p.y(), fx, fy, 0);
  }

  private void sought(Sought sought) {
    String name = sought.name();
    String body =
        sought.want() != Sought.Want.COUPLE && device.body(sought.body()).isEmpty()
            ? PIN + sought.body()
            : sought.body();
    Point p = at(sought.body(), sought.at().orElse(device.points().keySet().iterator().next()));
    switch (sought.want()) {
      case FORCE -> {
        Direction d = sought.direction().orElseThrow();
        effort(name, name, 1, new Push(body, p.x(), p.y(), d.x(), d.y(), 0));
      }
      case COMPONENTS -> {
        effort(name + ".x", name, 1, new Push(body, p.x(), p.y(), 1, 0, 0));
        effort(name + ".y", name, 1, new Push(body, p.x(), p.y(), 0, 1, 0));
      }
      case COUPLE -> effort(name, name, device.size(), new Push(body, 0, 0, 0, 0, device.size()));
      case INTENSITY -> {
        // of an even load: half of it at either end
        Point q = at(sought.body(), sought.to().orElseThrow());
        Direction d = sought.direction().orElseThrow();
        List<Push> halves =
            List.of(
                new Push(body, p.x(), p.y(), d.x() / 2, d.y() / 2, 0),
                new Push(body, q.x(), q.y(), d.x() / 2, d.y() / 2, 0));
        unknowns.add(new PlainUnknown(name, name, true, 1 / p.distance(q), halves, halves));
      }
      case MASS -> {
        double g = device.gravity().norm();
        double x = device.gravity().x() / g;
        double y = device.gravity().y() / g;
        effort(name + ".mass", name, 1 / g, new Push(body, p.x(), p.y(), x, y, 0));
      }
    }
  }

  private void effort(String ask, String name, double unit, Push push) {
    unknowns.add(new PlainUnknown(ask, name, true, unit, List.of(push), List.of(push)));
  }
}
