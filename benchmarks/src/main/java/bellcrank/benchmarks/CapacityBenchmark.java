package bellcrank.benchmarks;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Sweep;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Profiles;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Section;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.strength.TravelCapacity;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * What gives first on a luffing derrick over its course, all checks of a full sizing in their worst
 * poses; against a force in each pose and one call of the bare simplex for how far the device
 * holds.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CapacityBenchmark {

  /** Poses of the course. */
  static final int POSES = TravelCapacity.STEPS;

  private static final Variation.Multiple BARREL = Variation.of("barrel");

  private final Device device = MovingDevices.luffingDerrick();
  private final Sizing sizing = sizing();
  private final Course course = follow();
  private final Sweep sweep = course.sweep();
  private final Prepared.Slot heel = sweep.slot("heel pin.x on jib");

  private Course follow() {
    Drive rope = Drive.length("luffing rope");
    if (Travel.of(device, rope, CourseBenchmark.LEAST, CourseBenchmark.GREATEST)
        instanceof Course found) {
      return found;
    }
    throw new IllegalStateException("the derrick does not luff");
  }

  private static Sizing sizing() {
    Section tube = Profiles.tube(0.08, 0.08, 0.004).section();
    Material steel = MaterialTable.named("S235 (EN 10025-2)").at(0.004);
    PinJoint heel =
        new PinJoint(
            "heel pin",
            0.02,
            2,
            steel,
            List.of(
                new PinJoint.Plate("jib", 1, 0.012, 0.021, 0.03, 0.06, steel),
                new PinJoint.Plate("pole", 2, 0.008, 0.021, 0.03, 0.06, steel)),
            0.001);
    FilletWeld foot =
        new FilletWeld(
            "weld at the foot",
            "pole",
            Optional.of(new FilletWeld.Cut("foot", "heel", 0)),
            Optional.empty(),
            FilletWeld.Plane.ACROSS,
            0.003,
            List.of(
                new FilletWeld.Seam(-0.04, 0.04, 0.04, 0.04),
                new FilletWeld.Seam(-0.04, -0.04, 0.04, -0.04)),
            steel,
            Optional.empty());
    return Sizing.of(Method.RESISTANCE)
        .with("pole", tube, steel)
        .with("leg", tube, steel)
        .with("jib", tube, steel)
        .with("pole", new Bar("foot", "heel"), Profiles.tube(0.08, 0.08, 0.005).section(), steel)
        .with(ColumnEnds.pinned("jib", "heel", "tip"))
        .with(ColumnEnds.pinned("leg", "peg", "head"))
        .with(ColumnEnds.pinned("pole", "foot", "head"))
        .with(heel)
        .with(foot)
        .with(Rating.of("luffing rope", 20_000, "invented"));
  }

  /** What the library finds. */
  TravelCapacity found() {
    return TravelCapacity.of(course, sizing, BARREL);
  }

  /**
   * The library: all checks in their worst poses, and how far the device holds.
   *
   * @param sink takes what gives first
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void capacity(Blackhole sink) {
    sink.consume(found());
  }

  /**
   * A force in each pose, and the bare simplex: the greatest multiple at which the rope is pulled.
   *
   * @param sink takes the numbers
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void forcesAndSimplex(Blackhole sink) {
    for (int k = 0; k < POSES; k++) {
      sweep.moveTo(
          CourseBenchmark.LEAST
              + (CourseBenchmark.GREATEST - CourseBenchmark.LEAST) * (k + 0.5) / POSES);
      double force = sweep.value(heel);
      sink.consume(force);
      sink.consume(simplex(force));
    }
  }

  /** One variable and one row of the size that a rope gives. */
  private static double simplex(double perMultiple) {
    double[] goal = {1};
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(goal, 0),
            new LinearConstraintSet(
                List.of(
                    new LinearConstraint(new double[] {1}, Relationship.GEQ, 0),
                    new LinearConstraint(goal, Relationship.LEQ, Math.abs(perMultiple) + 1))),
            GoalType.MAXIMIZE)
        .getValue();
  }

  /** Whether the derrick has a part that can give way at all. */
  boolean concerns() {
    return Limits.concern(device);
  }
}
