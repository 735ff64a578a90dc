package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;

/**
 * The same device seen in a mirror (left for right), turned, enlarged, shifted, in that order, with
 * all forces in proportion: as with other units or axes.
 *
 * @param mirror whether left and right change places
 * @param turn angle in rad
 * @param scale factor of lengths
 * @param shift in m
 * @param force factor of forces
 */
public record Similarity(boolean mirror, double turn, double scale, Vector shift, double force) {

  public static final Similarity NONE = new Similarity(false, 0, 1, Vector.ZERO, 1);

  /** −1 if counter-clockwise becomes clockwise. */
  public int sense() {
    return mirror ? -1 : 1;
  }

  public double couple() {
    return sense() * scale * force;
  }

  private Vector turned(double x, double y) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double mx = sense() * x;
    return turn == 0 ? Vector.of(mx, y) : Vector.of(c * mx - s * y, s * mx + c * y);
  }

  public Point of(Point p) {
    Vector v = turned(p.x(), p.y());
    return Point.of(scale * v.x() + shift.x(), scale * v.y() + shift.y());
  }

  public Direction of(Direction d) {
    return Direction.from(turned(d.x(), d.y()));
  }

  /** A direction that is used by its left-hand side. */
  private Direction leftHanded(Direction d) {
    return mirror ? of(d).opposite() : of(d);
  }

  Vector ofForce(Vector f) {
    return turned(f.x(), f.y()).times(force);
  }

  public Device of(Device device) {
    DeviceBuilder builder = Device.named(device.name()).gravity(ofForce(device.gravity()));
    device.points().forEach((name, point) -> builder.point(name, of(point)));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    device.connections().forEach(one -> builder.connect(of(one)));
    device.loads().forEach(one -> builder.load(of(one, device)));
    device.cases().forEach(builder::loadCase);
    device.counts().forEach(builder::count);
    return builder.build();
  }

  private Connection of(Connection connection) {
    if (connection instanceof Pin p) {
      return new Pin(p.name(), p.at(), p.bodies(), p.radius() * scale, p.friction());
    } else if (connection instanceof Roller r) {
      return new Roller(r.name(), r.at(), r.body(), r.other(), of(r.push()), r.sides());
    } else if (connection instanceof Slot s) {
      return new Slot(s.name(), s.at(), s.body(), s.other(), leftHanded(s.along()), s.sides());
    } else if (connection instanceof Guide g) {
      return new Guide(g.name(), g.at(), g.body(), g.other(), leftHanded(g.along()));
    } else if (connection instanceof Contact c) {
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
    } else if (connection instanceof Screw s) {
      return new Screw(
          s.name(), s.first(), s.second(), s.lead() * scale, s.meanRadius() * scale, s.friction());
    } else if (connection instanceof Reeving r) {
      return new Reeving(
          r.name(), r.stops().stream().map(this::of).toList(), r.efficiency(), r.hauling());
    } else if (connection instanceof Wrap w) {
      return new Wrap(
          w.name(), of(w.first()), of(w.post()), of(w.last()), w.friction(), w.extraTurns());
    }
    // clamps, struts and lines have neither directions nor lengths of their own
    assert connection instanceof Clamp || connection instanceof Strut || connection instanceof Line;
    return connection;
  }

  private Stop of(Stop stop) {
    Turn turned =
        mirror == (stop.turn() == Turn.CLOCKWISE) ? Turn.COUNTER_CLOCKWISE : Turn.CLOCKWISE;
    return new Stop(stop.kind(), stop.body(), stop.at(), stop.radius() * scale, turned);
  }

  private Load of(Load load, Device device) {
    if (load instanceof Force f) {
      return new Force(f.name(), f.body(), f.at(), ofForce(f.vector()));
    } else if (load instanceof Couple c) {
      return new Couple(c.name(), c.member(), c.moment() * couple(), c.at());
    } else if (load instanceof SpreadLoad s) {
      return of(s, device);
    } else if (load instanceof Spring s) {
      return new Spring(
          s.name(), s.first(), s.second(), s.stiffness() * force / scale, s.freeLength() * scale);
    } else if (load instanceof TorsionSpring s) {
      return new TorsionSpring(
          s.name(), s.body(), s.other(), s.stiffness() * scale * force, s.turned() * sense());
    } else if (load instanceof Sought s) {
      return new Sought(s.name(), s.want(), s.body(), s.at(), s.direction().map(this::of), s.to());
    }
    assert load instanceof Weight;
    return load;
  }

  private Load of(SpreadLoad s, Device device) {
    double factor = force / scale * (s.direction().isEmpty() ? sense() : 1);
    if (s.per() == SpreadLoad.Per.HORIZONTAL) {
      // horizontal metres are of the drawn axes: the same load per metre along the segment
      Point a = device.point(s.from());
      Point b = device.point(s.to());
      factor *= Math.abs(b.x() - a.x()) / a.distance(b);
    }
    Optional<Direction> direction = s.direction().map(this::of);
    return new SpreadLoad(
        s.name(),
        s.member(),
        s.from(),
        s.to(),
        s.start() * factor,
        s.end() * factor,
        direction,
        SpreadLoad.Per.LENGTH);
  }
}
