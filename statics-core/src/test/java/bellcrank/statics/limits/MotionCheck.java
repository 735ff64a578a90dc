package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Looks at a motion of failure by the velocities of points, part by part, and asks the second
 * opinion whether a part that moves has nothing to hold it with in any state at the limit.
 */
final class MotionCheck {

  /** Speeds below this, of motions of order one, count as none. */
  private static final double STILL = 1e-6;

  /** Share of the loads below which a force counts as none. */
  private static final double NONE = 1e-5;

  private final Device device;
  private final List<BodyMotion> motions;
  private final PlainStates atLimit;
  private final Set<String> expected = new TreeSet<>();

  MotionCheck(Device device, List<BodyMotion> motions, double number, int sign) {
    this.device = device;
    this.motions = motions;
    double slack = 1e-9 * Math.max(1, Math.abs(number));
    PlainStates plain = PlainStates.of(device, 1, Set.of("push"));
    atLimit =
        sign > 0
            ? plain.between(number - slack, Double.POSITIVE_INFINITY)
            : plain.between(Double.NEGATIVE_INFINITY, number + slack);
  }

  /** Checks every part; what must be told to happen is the result. */
  Set<String> run(double number) {
    device.connections().forEach(this::part);
    double power = 0;
    for (Load load : device.loads()) {
      if (load instanceof Force force) {
        power += number * force.vector().dot(velocity(force.body(), device.point(force.at())));
      } else if (load instanceof Weight weight) {
        Vector v = velocity(weight.body(), device.point(weight.at().orElseThrow()));
        power += device.gravity().times(weight.mass()).dot(v);
      }
    }
    double size = atLimit.scale() * Math.max(1, Math.abs(number));
    assertThat(power).as("power of the loads").isGreaterThan(-1e-6 * size);
    return expected;
  }

  private Vector velocity(String body, Point at) {
    return motions.stream()
        .filter(motion -> motion.body().equals(body))
        .map(motion -> motion.velocityAt(at))
        .findFirst()
        .orElse(Vector.ZERO);
  }

  /** Velocity of the first body against the second. */
  private Vector against(Connection part, Point at) {
    return velocity(part.bodies().get(0), at).minus(velocity(part.bodies().get(1), at));
  }

  private void still(Connection part, double speed) {
    assertThat(Math.abs(speed)).as("speed that " + part.name() + " forbids").isLessThan(STILL);
  }

  private void none(Connection part, double[] goal, String what) {
    PlainStates.Best best = atLimit.greatest(goal);
    if (best.kind == PlainStates.Kind.UNSURE) {
      return;
    }
    assertThat(best.kind).as(part.name() + " " + what).isEqualTo(PlainStates.Kind.FOUND);
    assertThat(best.value)
        .as(part.name() + " " + what + " in any state")
        .isLessThan(NONE * atLimit.scale());
  }

  private void part(Connection part) {
    Point at = device.point(part.places().get(0));
    Vector v = against(part, at);
    if (part instanceof Pin) {
      still(part, v.norm());
    } else if (part instanceof Roller roller) {
      roller(roller, v.dot(roller.push().times(1)));
    } else if (part instanceof Contact contact) {
      touching(contact, v.dot(contact.push().times(1)), "normal", 1);
      slides(contact, contact.push(), contact.friction(), v);
    } else if (part instanceof ContactBase base) {
      base(base, at);
      slides(base, base.push(), base.friction(), v);
    } else if (part instanceof Wrap wrap) {
      wrap(wrap);
    } else {
      Point end = device.point(part.places().get(1));
      Vector apart = velocity(part.bodies().get(1), end).minus(velocity(part.bodies().get(0), at));
      double stretch = apart.dot(Direction.from(at, end).times(1));
      if (part instanceof Line) {
        shortening(part, stretch, atLimit.reading(part.name(), "tension", 1));
      } else {
        still(part, stretch);
      }
    }
  }

  private void shortening(Connection part, double stretch, double[] tension) {
    assertThat(stretch).as(part.name() + " does not stretch").isLessThan(STILL);
    if (stretch < -STILL) {
      none(part, tension, "pulls");
      expected.add(Event.Kind.GOES_SLACK + " " + part.name());
    }
  }

  private void roller(Roller roller, double apart) {
    if (roller.sides() == Sides.TWO) {
      still(roller, apart);
    } else {
      touching(roller, apart, "normal", 1);
    }
  }

  private void touching(Connection part, double apart, String what, double multiple) {
    assertThat(apart).as(part.name() + " does not enter the surface").isGreaterThan(-STILL);
    if (apart > STILL) {
      none(part, atLimit.reading(part.name(), what, multiple), "pushes");
      expected.add(Event.Kind.LIFTS + " " + part.name());
    }
  }

  /** The push on an edge is N/2 + M/B. */
  private void base(ContactBase base, Point at) {
    int open = 0;
    for (int side = -1; side <= 1; side += 2) {
      Point edge = at.plus(PlainParts.tangent(base.push()).times(side * base.width() / 2));
      double apart = against(base, edge).dot(base.push().times(1));
      assertThat(apart).as(base.name() + " does not enter the surface").isGreaterThan(-STILL);
      if (apart > STILL) {
        open++;
        double[] goal = atLimit.reading(base.name(), "normal", 0.5);
        double[] couple = atLimit.reading(base.name(), "couple", side / base.width());
        none(base, sum(goal, couple), "pushes on an edge");
      }
    }
    if (open > 0) {
      expected.add((open == 2 ? Event.Kind.LIFTS : Event.Kind.TIPS) + " " + base.name());
    }
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = one.clone();
    for (int j = 0; j < sum.length; j++) {
      sum[j] += other[j];
    }
    return sum;
  }

  /** What slides is held back by all the friction there is: μN − |T| is nothing in any state. */
  private void slides(Connection part, Direction push, double mu, Vector v) {
    double along = v.dot(PlainParts.tangent(push));
    if (mu == 0 || Math.abs(along) < STILL) {
      return;
    }
    double[] normal = atLimit.reading(part.name(), "normal", mu);
    double[] friction = atLimit.reading(part.name(), "friction", Math.signum(along));
    none(part, sum(normal, friction), "has friction left");
    boolean lifts =
        expected.contains(Event.Kind.LIFTS + " " + part.name())
            || expected.contains(Event.Kind.TIPS + " " + part.name());
    if (!lifts) {
      expected.add(Event.Kind.SLIDES + " " + part.name());
    }
  }

  private void wrap(Wrap wrap) {
    PlainParts.Straight in = PlainParts.before(device, wrap);
    PlainParts.Straight out = PlainParts.after(device, wrap);
    double first = grows(in);
    double last = grows(out);
    double[] tension = atLimit.reading(wrap.name(), "tension", 1);
    double[] end = atLimit.reading(wrap.name(), "end tension", 1);
    shortening(wrap, first + last, sum(tension, end));
    if (first + last > -STILL && Math.abs(first) > STILL) {
      Map<String, Double> reads =
          PlainParts.of(device, 1).stream()
              .filter(force -> force.part().equals(wrap.name()))
              .findFirst()
              .orElseThrow()
              .reads();
      double most = reads.getOrDefault("tension", 0.0) / reads.getOrDefault("end tension", 1.0);
      // the side to which the rope runs pulls as much more as it can
      String loose = first > 0 ? "end tension" : "tension";
      String tight = first > 0 ? "tension" : "end tension";
      double[] more = atLimit.reading(wrap.name(), loose, 1);
      none(wrap, sum(more, atLimit.reading(wrap.name(), tight, -1 / most)), "could hold");
      expected.add(Event.Kind.SLIPS_ROUND + " " + wrap.name());
    }
  }

  private double grows(PlainParts.Straight part) {
    Vector apart =
        velocity(part.to().body(), part.reaches())
            .minus(velocity(part.from().body(), part.leaves()));
    return apart.dot(part.along().times(1));
  }
}
