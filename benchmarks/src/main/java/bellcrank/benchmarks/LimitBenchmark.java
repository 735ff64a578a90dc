package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import java.util.ArrayList;
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
 * The greatest multiple of a load that a built device of rough contacts bears, from nothing:
 * assembly, factor, program, simplex and check; against the bare simplex on the numbers of the same
 * program. As drawn, or in other poses in turn; and once more from limits that were kept.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LimitBenchmark {

  private static final int POSES = 16;

  /** By how much both ways may differ, relative. */
  private static final double SAME = 1e-9;

  /** What is measured. */
  @Param public RoughSample sample = RoughSample.LADDER;

  /** In which poses. */
  @Param public PreparedBenchmark.Poses poses = PreparedBenchmark.Poses.DRAWN;

  private Device device = sample.device();
  private LoadCase loadCase = device.cases().get(0);
  private Variation variation = Variation.of(sample.varied());
  private List<Pose> turns = List.of();
  private List<Limits> kept = List.of();
  private List<ContactProgram> programs = List.of();
  private int turn;

  /**
   * Builds the device and the numbers of the programs, and compares both ways in every pose.
   *
   * @throws IllegalStateException if they differ
   */
  @Setup
  public void build() {
    device = sample.device();
    loadCase = device.cases().get(0);
    variation = Variation.of(sample.varied());
    turns =
        poses == PreparedBenchmark.Poses.DRAWN ? List.of(Pose.DRAWN) : Sample.poses(device, POSES);
    List<ContactProgram> built = new ArrayList<>();
    for (Pose pose : turns) {
      ContactProgram program = ContactProgram.of(device, pose, loadCase, sample.varied());
      double own = limit(pose);
      for (double bare : new double[] {program.solve(), program.solveReady()}) {
        if (!(Math.abs(own - bare) <= SAME * Math.abs(bare))) {
          throw new IllegalStateException("limit is " + own + ", simplex says " + bare);
        }
      }
      built.add(program);
    }
    programs = List.copyOf(built);
    kept = turns.stream().map(this::limits).toList();
  }

  private int next() {
    turn = turn + 1 < turns.size() ? turn + 1 : 0;
    return turn;
  }

  private Limits limits(Pose pose) {
    return Limits.of(device, loadCase, pose, List.of());
  }

  private double limit(Pose pose) {
    return limits(pose).greatest(variation).orElseThrow();
  }

  /**
   * The library.
   *
   * @return the greatest multiple
   */
  @Benchmark
  public double limit() {
    return limit(turns.get(next()));
  }

  /**
   * The library, from limits of the device in its pose that were kept: program, simplex and check.
   *
   * @return the greatest multiple
   */
  @Benchmark
  public double limitAgain() {
    return kept.get(next()).greatest(variation).orElseThrow();
  }

  /**
   * The bare simplex, from the numbers of the program.
   *
   * @return the greatest multiple
   */
  @Benchmark
  public double simplex() {
    return programs.get(next()).solve();
  }

  /**
   * The bare simplex, from conditions that it has taken in before.
   *
   * @return the greatest multiple
   */
  @Benchmark
  public double simplexReady() {
    return programs.get(next()).solveReady();
  }
}
