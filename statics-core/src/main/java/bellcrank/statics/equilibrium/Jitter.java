package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Slot;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;

/**
 * A device of the same connections in a slightly different shape. What moves in it too moves for
 * want of restraints; what does not, moved only because of a special shape.
 */
final class Jitter {

  private static final double SHARE = 0.02;

  /** A shape that cannot change by this share is taken as it is. */
  private static final double LEAST_SHARE = 1e-5;

  private Jitter() {}

  static Device of(Device device) {
    // the stops of a rope may be so close that only a smaller change leaves it a straight part
    for (double share = SHARE; share > LEAST_SHARE; share /= 4) {
      DeviceBuilder changed = of(device, share);
      if (changed.problems().isEmpty()) {
        return changed.build();
      }
    }
    return device;
  }

  private static DeviceBuilder of(Device device, double share) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    double reach = share * device.size();
    device.points().forEach((name, point) -> builder.point(name, move(point, reach)));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    for (Connection connection : device.connections()) {
      builder.connect(turn(connection, share));
    }
    device.loads().forEach(builder::load);
    return builder;
  }

  /** Points at one place stay together: the shift depends on the place alone. */
  private static Point move(Point point, double reach) {
    int hash = Double.hashCode(point.x()) * 31 + Double.hashCode(point.y());
    return Point.of(point.x() + reach * fraction(hash), point.y() + reach * fraction(~hash));
  }

  private static double fraction(int hash) {
    int mixed = hash * 0x9E3779B9;
    mixed ^= mixed >>> 15;
    mixed *= 0x85EBCA6B;
    mixed ^= mixed >>> 13;
    return mixed / (double) (1L << 31);
  }

  private static Connection turn(Connection connection, double share) {
    double angle = share * fraction(connection.name().hashCode());
    if (connection instanceof Roller r) {
      return new Roller(r.name(), r.at(), r.body(), r.other(), turn(r.push(), angle), r.sides());
    }
    if (connection instanceof Slot s) {
      return new Slot(s.name(), s.at(), s.body(), s.other(), turn(s.along(), angle), s.sides());
    }
    if (connection instanceof Guide g) {
      return new Guide(g.name(), g.at(), g.body(), g.other(), turn(g.along(), angle));
    }
    if (connection instanceof Contact c) {
      return new Contact(
          c.name(),
          c.at(),
          c.body(),
          c.other(),
          turn(c.push(), angle),
          c.friction(),
          c.kineticFriction());
    }
    if (connection instanceof ContactBase b) {
      return new ContactBase(
          b.name(),
          b.at(),
          b.body(),
          b.other(),
          turn(b.push(), angle),
          b.width(),
          b.friction(),
          b.kineticFriction());
    }
    return connection;
  }

  private static Direction turn(Direction direction, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return Direction.from(
        c * direction.x() - s * direction.y(), s * direction.x() + c * direction.y());
  }
}
