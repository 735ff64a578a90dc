package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Sweep;
import bellcrank.statics.motion.Travel;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * A derrick luffed by its rope from almost upright to almost level: poses at a thousand lengths of
 * the rope from a course that was found before, as objects or by a sweep, against Newton's method
 * with a plain dense matrix and LU from the same number of places on the way. Figures are for one
 * pose. And the finding of the course itself.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CourseBenchmark {

  /** Poses in a sweep. */
  static final int POSES = 1_000;

  /** Least change of the rope's length, in m: the jib is almost upright. */
  static final double LEAST = -1.8;

  /** Greatest change of the rope's length, in m: the jib is almost level. */
  static final double GREATEST = 2.0;

  private static final Drive ROPE = Drive.length("luffing rope");

  /** Intervals of the plain course: as many as the library's course has here. */
  private static final int INTERVALS = 38;

  private final Device device = MovingDevices.luffingDerrick();
  private Course course = follow();
  private PlainCourse plain = follow(device);
  private Sweep sweep = course.sweep();
  private Sweep.Spot tip = sweep.spot("jib", "tip");
  private Prepared.Slot heel = sweep.slot("heel pin.x on jib");

  private static PlainCourse follow(Device device) {
    EjmlSolver solver = EjmlSolver.lu(3 * device.members().size());
    return PlainCourse.of(device, solver, LEAST, GREATEST, INTERVALS);
  }

  private Course follow() {
    if (Travel.of(device, ROPE, LEAST, GREATEST) instanceof Course found) {
      return found;
    }
    throw new IllegalStateException("the derrick does not luff");
  }

  /** Finds both courses. */
  @Setup
  public void build() {
    course = follow();
    plain = follow(device);
    sweep = course.sweep();
    tip = sweep.spot("jib", "tip");
    heel = sweep.slot("heel pin.x on jib");
  }

  /** Change of the rope's length at a pose of the sweep, in m. */
  static double at(int pose) {
    return LEAST + (GREATEST - LEAST) * (pose + 0.5) / POSES;
  }

  /** The pose of the library. */
  Pose pose(double at) {
    return course.pose(at);
  }

  /** The sweep of the library, at a pose. */
  Sweep sweep(double at) {
    sweep.moveTo(at);
    return sweep;
  }

  /** The plain course, at a pose. */
  PlainCourse plain(double at) {
    plain.pose(at);
    return plain;
  }

  /**
   * The library, from a course that was kept.
   *
   * @param sink takes the poses
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void pose(Blackhole sink) {
    for (int k = 0; k < POSES; k++) {
      sink.consume(course.pose(at(k)));
    }
  }

  /**
   * The library, by a sweep: a point's place and its body's turn.
   *
   * @param sink takes the numbers
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void sweep(Blackhole sink) {
    for (int k = 0; k < POSES; k++) {
      sweep.moveTo(at(k));
      sink.consume(sweep.x(tip));
      sink.consume(sweep.y(tip));
      sink.consume(sweep.turn(tip));
    }
  }

  /**
   * The library, by a sweep: a force.
   *
   * @param sink takes the numbers
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void sweepForce(Blackhole sink) {
    for (int k = 0; k < POSES; k++) {
      sweep.moveTo(at(k));
      sink.consume(sweep.value(heel));
    }
  }

  /**
   * The plain way.
   *
   * @param sink takes the poses
   */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void newton(Blackhole sink) {
    for (int k = 0; k < POSES; k++) {
      sink.consume(plain.pose(at(k)));
    }
  }

  /**
   * The library: the course itself, both ways from the drawn pose, with the balance that tells
   * whether the rope stays taut.
   *
   * @return the course
   */
  @Benchmark
  public Course travel() {
    return follow();
  }
}
