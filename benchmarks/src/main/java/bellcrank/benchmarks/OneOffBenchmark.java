package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
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
 * One balance of a built device, from nothing: assembly, order, solve, residual, condition and
 * outcome; against the bare numbers of the {@link Yardstick}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class OneOffBenchmark {

  /** What is measured. */
  @Param public Sample sample = Sample.DERRICK;

  private Device device = sample.device();
  private Yardstick yardstick = Yardstick.of(device, EjmlSolver.lu(unknowns(device)));

  /** Builds the device and the yardstick's storage. */
  @Setup
  public void build() {
    device = sample.device();
    yardstick = Yardstick.of(device, EjmlSolver.lu(unknowns(device)));
  }

  /** All devices measured are determinate: as many unknowns as equations. */
  static int unknowns(Device device) {
    return 3 * device.members().size() + 2 * device.joints().size();
  }

  /**
   * Outcome, residual and condition of a balance.
   *
   * @param outcome how it comes out
   * @param residual relative to the largest force
   * @param condition 1 or more
   * @param balance the balance they are of
   */
  public record Verdict(Outcome outcome, double residual, double condition, Balance balance) {}

  /**
   * The library.
   *
   * @return the balance and what is read from it
   */
  @Benchmark
  public Verdict balance() {
    Balance balance = Balance.of(device);
    return new Verdict(balance.outcome(), balance.residual(), balance.condition(), balance);
  }

  /**
   * The yardstick.
   *
   * @return the unknowns
   */
  @Benchmark
  public double[] yardstick() {
    return yardstick.solve(Pose.DRAWN, device.cases().get(0));
  }
}
