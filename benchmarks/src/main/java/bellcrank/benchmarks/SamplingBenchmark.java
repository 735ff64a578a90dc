package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.Progress;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sampling;
import bellcrank.statics.study.Uncertain;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A sample of the barrel derrick with six uncertain numbers, five of which need a new device, and
 * two figures; against the balance alone of a device that is built already.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SamplingBenchmark {

  /** Samples in one run. */
  static final int SAMPLES = 8192;

  private final Device device = SampleDevices.derrick();
  private final Sampling sampling = sampling();
  private long seed;

  /**
   * What is sampled.
   *
   * @return the derrick with its uncertain numbers
   */
  static Sampling sampling() {
    return Sampling.of(
        Model.of(SampleDevices.derrick()),
        List.of(
            Uncertain.normal(Input.mass("barrel"), 240, 12),
            Uncertain.within(Input.x("tip"), 0.05),
            Uncertain.within(Input.y("tip"), 0.05),
            Uncertain.triangular(Input.x("peg"), -3.7, -3.6, -3.5),
            Uncertain.within(Input.y("head"), 0.03),
            Uncertain.within(Input.radius("luffing rope", "axle"), 0.003)),
        List.of(Figure.parse("hand"), Figure.parse("stay.tension")));
  }

  /**
   * The library in one thread.
   *
   * @return what came of the samples
   */
  @Benchmark
  @OperationsPerInvocation(SAMPLES)
  public Samples samples() {
    return sampling.run(SAMPLES, seed++);
  }

  /**
   * The library in two threads.
   *
   * @return what came of the samples
   */
  @Benchmark
  @OperationsPerInvocation(SAMPLES)
  public Samples samplesInTwoThreads() {
    return sampling.run(SAMPLES, seed++, 2, Progress.UNWATCHED);
  }

  /**
   * The balance alone.
   *
   * @return how it comes out
   */
  @Benchmark
  public Outcome balance() {
    return Balance.of(device).outcome();
  }
}
