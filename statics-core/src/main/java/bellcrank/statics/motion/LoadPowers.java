package bellcrank.statics.motion;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Powers of the given loads at a place of a course, for a rate of the drive of one. */
final class LoadPowers {

  private final Course course;
  private final Device device;
  private final Pose pose;
  private final Map<String, BodyMotion> motions = new HashMap<>();

  /**
   * Powers at a value of the drive.
   *
   * @param moving how the bodies move there
   */
  LoadPowers(Course course, double at, List<BodyMotion> moving) {
    this.course = course;
    device = course.device();
    pose = course.pose(at);
    moving.forEach(motion -> motions.put(motion.body(), motion));
  }

  /** Sum of the powers of all loads. */
  double sum() {
    double sum = 0;
    for (Load load : device.loads()) {
      sum += course.loadCase().factor(load.name()) * power(load);
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        Vector half = device.gravity().times(strut.mass() / 2);
        double power = half.dot(velocity(strut.first())) + half.dot(velocity(strut.second()));
        sum += course.loadCase().factor(strut.name()) * power;
      }
    }
    return sum;
  }

  /** The power that all loads would have along the fastest motion: a measure for rounding. */
  double gross() {
    double fastest = 0;
    for (BodyMotion motion : motions.values()) {
      double speed = motion.velocity().norm() + Math.abs(motion.turning()) * device.size();
      fastest = Math.max(fastest, speed);
    }
    return fastest * LoadSizes.sum(device, course.loadCase());
  }

  private double power(Load load) {
    if (load instanceof Force force) {
      return force.vector().dot(velocity(force.body(), device.point(force.at())));
    }
    if (load instanceof Weight weight) {
      Point at = weight.at().map(device::point).orElseGet(() -> middle(weight.body()));
      return device.gravity().times(weight.mass()).dot(velocity(weight.body(), at));
    }
    if (load instanceof Couple couple) {
      return couple.moment() * (isBody(couple.member()) ? turning(couple.member()) : screw(couple));
    }
    if (load instanceof SpreadLoad spread) {
      return power(spread);
    }
    if (load instanceof Spring spring) {
      Point first = place(spring.first());
      Point second = place(spring.second());
      double length = first.distance(second);
      Vector nearing = velocity(spring.first()).minus(velocity(spring.second()));
      return length > 0
          ? spring.stiffness()
              * (length - spring.freeLength())
              * first.to(second).dot(nearing)
              / length
          : 0;
    }
    if (load instanceof TorsionSpring spring) {
      double turned =
          spring.turned() + pose.frame(spring.body()).turn() - pose.frame(spring.other()).turn();
      return -spring.stiffness() * turned * (turning(spring.body()) - turning(spring.other()));
    }
    return 0;
  }

  private double power(SpreadLoad load) {
    Point a = pose.frame(load.member()).apply(device.point(load.from()));
    Point b = pose.frame(load.member()).apply(device.point(load.to()));
    double drawn = device.point(load.from()).distance(device.point(load.to()));
    double measured =
        load.per() == SpreadLoad.Per.HORIZONTAL
            ? Math.abs(device.point(load.to()).x() - device.point(load.from()).x())
            : drawn;
    Direction way = load.direction().orElseGet(() -> Direction.from(a, b).perpendicular());
    double total = (load.start() + load.end()) / 2 * measured;
    // the antisymmetric part of the trapezoid is a couple of difference · length / 12
    Vector along = a.to(b);
    double couple =
        (load.end() - load.start()) * measured / 12 * along.cross(Vector.of(way.x(), way.y()));
    Vector middle = worldVelocity(load.member(), a.plus(along.times(0.5)));
    return way.times(total).dot(middle) + couple * turning(load.member());
  }

  /** A screw turns only where its own length drives the device. */
  private double screw(Couple couple) {
    boolean driven =
        course.drive() instanceof Drive.Length length
            && length.connection().equals(couple.member())
            && device.connection(couple.member()).orElse(null) instanceof Screw;
    Connection screw = device.connection(couple.member()).orElseThrow();
    return driven && screw instanceof Screw thread ? 2 * Math.PI / thread.lead() : 0;
  }

  private boolean isBody(String name) {
    return device.body(name).isPresent();
  }

  private Point middle(String member) {
    return device.middleOfBars((Member) device.body(member).orElseThrow());
  }

  private Point place(End end) {
    return pose.frame(end.body()).apply(device.point(end.at()));
  }

  private Vector velocity(End end) {
    return velocity(end.body(), device.point(end.at()));
  }

  /** Velocity of a drawn point of a member, joint or pin. */
  private Vector velocity(String body, Point drawn) {
    String carrier = body;
    if (!isBody(body) && device.connection(body).orElse(null) instanceof Pin pin) {
      // a pin goes with all its bodies
      carrier = pin.bodies().contains(Ground.NAME) ? Ground.NAME : pin.bodies().get(0);
    }
    return worldVelocity(carrier, pose.frame(carrier).apply(drawn));
  }

  private Vector worldVelocity(String body, Point place) {
    BodyMotion motion = motions.get(body);
    return motion == null ? Vector.ZERO : motion.velocityAt(place);
  }

  private double turning(String body) {
    BodyMotion motion = motions.get(body);
    return motion == null ? 0 : motion.turning();
  }
}
