package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Prepared;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A prepared device solved again, all coefficients evaluated anew, as drawn or in one of several
 * poses in turn; against plain dense assembly and a solve by three other factors.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class PreparedBenchmark {

  private static final int POSES = 16;

  /** Which poses are solved. */
  public enum Poses {
    /** The drawn pose again and again. */
    DRAWN,
    /** Other poses in turn. */
    MOVED
  }

  /** What is measured. */
  @Param({"DERRICK", "ROOF_RING"})
  public Sample sample = Sample.DERRICK;

  /** In which poses. */
  @Param public Poses poses = Poses.DRAWN;

  private Device device = sample.device();
  private LoadCase loadCase = device.cases().get(0);
  private List<Pose> turns = List.of(Pose.DRAWN);
  private int turn;
  private Prepared.Buffer buffer = Prepared.of(device).buffer();
  private Yardstick lu = Yardstick.of(device, EjmlSolver.lu(9));
  private Yardstick qr = Yardstick.of(device, EjmlSolver.qr(9));
  private Yardstick commons = Yardstick.of(device, CommonsSolver.lu(9));

  /** Builds the device and all storage. */
  @Setup
  public void build() {
    device = sample.device();
    loadCase = device.cases().get(0);
    turns = poses == Poses.DRAWN ? List.of(Pose.DRAWN) : Sample.poses(device, POSES);
    buffer = Prepared.of(device).buffer();
    int unknowns = OneOffBenchmark.unknowns(device);
    lu = Yardstick.of(device, EjmlSolver.lu(unknowns));
    qr = Yardstick.of(device, EjmlSolver.qr(unknowns));
    commons = Yardstick.of(device, CommonsSolver.lu(unknowns));
  }

  private Pose next() {
    turn = turn + 1 < turns.size() ? turn + 1 : 0;
    return turns.get(turn);
  }

  /**
   * The library.
   *
   * @return the buffer with the answers
   */
  @Benchmark
  public Prepared.Buffer prepared() {
    if (!buffer.solve(next(), loadCase)) {
      throw new IllegalStateException("singular equations");
    }
    return buffer;
  }

  /**
   * The yardstick: EJML LU.
   *
   * @return the unknowns
   */
  @Benchmark
  public double[] yardstick() {
    return lu.solve(next(), loadCase);
  }

  /**
   * The same assembly with EJML QR.
   *
   * @return the unknowns
   */
  @Benchmark
  public double[] householder() {
    return qr.solve(next(), loadCase);
  }

  /**
   * The same assembly with the LU of commons-math.
   *
   * @return the unknowns
   */
  @Benchmark
  public double[] commons() {
    return commons.solve(next(), loadCase);
  }
}
