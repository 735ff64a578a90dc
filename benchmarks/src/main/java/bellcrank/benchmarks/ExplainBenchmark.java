package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.units.UnitSystem;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Telling how the barrel derrick is worked out, and drawing it cut free, each from the built
 * device; against its balance alone.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ExplainBenchmark {

  private final Device device = SampleDevices.derrick();

  /**
   * The balance alone.
   *
   * @return how it comes out
   */
  @Benchmark
  public Outcome balance() {
    return Balance.of(device).outcome();
  }

  /**
   * Balance and worked solution.
   *
   * @return the full text
   */
  @Benchmark
  public String worked() {
    WorkedSolution solution = WorkedSolution.of(Balance.of(device));
    return SolutionWriter.of(Detail.FULL, UnitSystem.SI).text(solution);
  }

  /**
   * Balance and drawing of the whole device, cut free from the ground.
   *
   * @return the picture
   */
  @Benchmark
  public String drawing() {
    return FreeBodyDrawing.of(Balance.of(device)).svg();
  }
}
