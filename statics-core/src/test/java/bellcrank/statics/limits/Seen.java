package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * A device of {@link RandomContacts} as it looks in a mirror, turned with its gravity, in other
 * units, from elsewhere, in that order; and other changed copies.
 *
 * @param mirror whether left and right change places
 * @param turn angle in rad
 * @param scale factor of lengths
 * @param shift in m
 * @param force factor of forces
 */
record Seen(boolean mirror, double turn, double scale, Vector shift, double force) {

  private Vector turned(double x, double y) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double mx = mirror ? -x : x;
    return turn == 0 ? Vector.of(mx, y) : Vector.of(c * mx - s * y, s * mx + c * y);
  }

  private Point of(Point p) {
    return Point.ORIGIN.plus(turned(p.x(), p.y()).times(scale)).plus(shift);
  }

  private Direction of(Direction d) {
    return Direction.from(turned(d.x(), d.y()));
  }

  Device of(Device device) {
    Vector gravity = turned(device.gravity().x(), device.gravity().y()).times(force);
    DeviceBuilder builder = Device.named(device.name()).gravity(gravity);
    device.points().forEach((name, point) -> builder.point(name, of(point)));
    device.members().forEach(builder::member);
    device.connections().forEach(one -> builder.connect(of(one)));
    for (Load load : device.loads()) {
      builder.load(
          load instanceof Force f
              ? new Force(
                  f.name(), f.body(), f.at(), turned(f.vector().x(), f.vector().y()).times(force))
              : load);
    }
    return builder.build();
  }

  private Connection of(Connection connection) {
    if (connection instanceof Contact c) {
      return new Contact(
          c.name(), c.at(), c.body(), c.other(), of(c.push()), c.friction(), c.kineticFriction());
    } else if (connection instanceof ContactBase b) {
      return new ContactBase(
          b.name(),
          b.at(),
          b.body(),
          b.other(),
          of(b.push()),
          b.width() * scale,
          b.friction(),
          b.kineticFriction());
    } else if (connection instanceof Roller r) {
      return new Roller(r.name(), r.at(), r.body(), r.other(), of(r.push()), r.sides());
    } else if (connection instanceof Wrap w) {
      Turn way = w.post().turn();
      Turn back = way == Turn.CLOCKWISE ? Turn.COUNTER_CLOCKWISE : Turn.CLOCKWISE;
      Stop post =
          new Stop(
              Stop.Kind.POST,
              w.post().body(),
              w.post().at(),
              w.post().radius() * scale,
              mirror ? back : way);
      return new Wrap(w.name(), w.first(), post, w.last(), w.friction(), w.extraTurns());
    }
    return connection; // the others have neither directions nor lengths of their own
  }

  /** All parts in another order. */
  static Device shuffled(Device device, long seed) {
    Random random = new Random(seed);
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    device.points().forEach(builder::point);
    mixed(device.members(), random).forEach(builder::member);
    mixed(device.connections(), random).forEach(builder::connect);
    mixed(device.loads(), random).forEach(builder::load);
    return builder.build();
  }

  private static <T> List<T> mixed(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }

  /** With other connections, and some more. */
  static DeviceBuilder changed(Device device, UnaryOperator<Connection> change) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    device.points().forEach(builder::point);
    device.members().forEach(builder::member);
    device.connections().forEach(one -> builder.connect(change.apply(one)));
    device.loads().forEach(builder::load);
    return builder;
  }

  /** With coefficients of static friction times a factor. */
  static Device rougher(Device device, double factor) {
    return changed(device, one -> rougher(one, factor)).build();
  }

  private static Connection rougher(Connection connection, double factor) {
    if (connection instanceof Contact c) {
      double mu = c.friction() * factor;
      return new Contact(c.name(), c.at(), c.body(), c.other(), c.push(), mu, c.kineticFriction());
    } else if (connection instanceof ContactBase b) {
      double mu = b.friction() * factor;
      return new ContactBase(
          b.name(), b.at(), b.body(), b.other(), b.push(), b.width(), mu, b.kineticFriction());
    } else if (connection instanceof Wrap w) {
      return new Wrap(
          w.name(), w.first(), w.post(), w.last(), w.friction() * factor, w.extraTurns());
    }
    return connection;
  }
}
