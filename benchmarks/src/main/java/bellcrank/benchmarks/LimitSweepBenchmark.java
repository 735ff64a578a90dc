package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.LimitSweep;
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
 * The greatest multiple of a load in each of 200 poses, by a sweep or from limits in each pose;
 * against one call of the bare simplex for each pose, on the numbers of the same programs.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LimitSweepBenchmark {

  private static final int POSES = 200;

  /** By how much both ways may differ, relative. */
  private static final double SAME = 1e-9;

  /** What is measured. */
  @Param public RoughSample sample = RoughSample.LADDER;

  private Limits drawn = Limits.of(sample.device());
  private Variation variation = Variation.of(sample.varied());
  private LimitSweep sweep = drawn.sweep(variation);
  private List<Pose> poses = List.of();
  private List<ContactProgram> programs = List.of();

  /**
   * Builds the device and the numbers of the programs, and compares both ways.
   *
   * @throws IllegalStateException if they differ
   */
  @Setup
  public void build() {
    Device device = sample.device();
    drawn = Limits.of(device);
    variation = Variation.of(sample.varied());
    sweep = drawn.sweep(variation);
    poses = Sample.poses(device, POSES);
    List<ContactProgram> built = new ArrayList<>();
    for (Pose pose : poses) {
      built.add(ContactProgram.of(device, pose, LoadCase.ALL_LOADS, sample.varied()));
    }
    programs = List.copyOf(built);
    double bare = simplex();
    for (double own : new double[] {sweep(), objects()}) {
      if (!(Math.abs(own - bare) <= SAME * Math.abs(bare))) {
        throw new IllegalStateException("limits add up to " + own + ", simplex says " + bare);
      }
    }
  }

  /**
   * The library, by a sweep.
   *
   * @return the sum of the greatest multiples
   */
  @Benchmark
  public double sweep() {
    double sum = 0;
    for (Pose pose : poses) {
      sweep.moveTo(pose);
      sum += sweep.greatest();
    }
    return sum;
  }

  /**
   * The library, with limits of their own in each pose.
   *
   * @return the sum of the greatest multiples
   */
  @Benchmark
  public double objects() {
    double sum = 0;
    for (Pose pose : poses) {
      sum += drawn.at(pose).greatest(variation).orElseThrow();
    }
    return sum;
  }

  /**
   * The bare simplex.
   *
   * @return the sum of the greatest multiples
   */
  @Benchmark
  public double simplex() {
    double sum = 0;
    for (ContactProgram program : programs) {
      sum += program.solve();
    }
    return sum;
  }
}
