package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is timed must be the right answer. */
class BenchmarkBodiesTest {

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  private static double si(Answer answer) {
    return ((Answer.Value) answer).si();
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void oneOffBalanceAgreesWithTheYardstick(Sample sample) {
    OneOffBenchmark benchmark = new OneOffBenchmark();
    benchmark.sample = sample;
    benchmark.build();

    OneOffBenchmark.Verdict verdict = benchmark.balance();
    double[] expected = benchmark.yardstick();

    assertThat(verdict.outcome().words()).isEqualTo("in balance");
    assertThat(verdict.residual()).isLessThan(1e-12);
    assertThat(verdict.condition()).isBetween(1.0, 1e3);
    sameConnectionForces(verdict.balance(), expected);
  }

  /** Pins by both components, all else by size; unknowns are in the order of the connections. */
  private static void sameConnectionForces(Balance balance, double[] expected) {
    double tolerance = 1e-9 * largest(expected);
    Device device = balance.device();
    int column = 0;
    for (var connection : device.connections()) {
      Reaction first =
          balance.reactions().stream()
              .filter(reaction -> reaction.connection().equals(connection.name()))
              .findFirst()
              .orElseThrow();
      if (connection instanceof Pin) {
        assertThat(si(first.x())).isCloseTo(expected[column], within(tolerance));
        assertThat(si(first.y())).isCloseTo(expected[column + 1], within(tolerance));
        column += 2;
      } else {
        assertThat(si(first.size())).isCloseTo(Math.abs(expected[column]), within(tolerance));
        column++;
      }
    }
    assertThat(column + device.sought().size()).isEqualTo(expected.length);
  }

  @ParameterizedTest
  @CsvSource({"DERRICK, DRAWN", "DERRICK, MOVED", "ROOF_RING, DRAWN", "ROOF_RING, MOVED"})
  void preparedSolvesAgreeWithTheOthers(Sample sample, PreparedBenchmark.Poses poses) {
    PreparedBenchmark library = benchmark(sample, poses);
    PreparedBenchmark lu = benchmark(sample, poses);
    PreparedBenchmark qr = benchmark(sample, poses);
    PreparedBenchmark commons = benchmark(sample, poses);
    for (int turn = 0; turn < 20; turn++) {
      Prepared.Buffer buffer = library.prepared();
      double[] expected = lu.yardstick().clone();
      double[] householder = qr.householder();
      double[] other = commons.commons();
      double tolerance = 1e-9 * largest(expected);
      assertThat(buffer.residual()).isLessThan(1e-12);
      for (int k = 0; k < 9; k++) {
        assertThat(buffer.value(new Prepared.Slot(k, 1))).isCloseTo(expected[k], within(tolerance));
        assertThat(householder[k]).isCloseTo(expected[k], within(tolerance));
        assertThat(other[k]).isCloseTo(expected[k], within(tolerance));
      }
    }
  }

  @Test
  void workedSolutionAndDrawingTellTheForcesOfTheBalance() {
    ExplainBenchmark benchmark = new ExplainBenchmark();
    Balance balance = Balance.of(SampleDevices.derrick());
    double stay = si(balance.answer(Ask.parse("stay.tension")));
    String told = UnitSystem.SI.format(stay, Dimension.FORCE, 4);

    assertThat(benchmark.balance().words()).isEqualTo("in balance");
    assertThat(benchmark.worked()).contains("stay.tension: " + told);
    assertThat(benchmark.drawing())
        .contains(">" + told + "<", "data-force=\"stay\"", "data-force=\"foot pin\"");
  }

  private static PreparedBenchmark benchmark(Sample sample, PreparedBenchmark.Poses poses) {
    PreparedBenchmark benchmark = new PreparedBenchmark();
    benchmark.sample = sample;
    benchmark.poses = poses;
    benchmark.build();
    return benchmark;
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void posesDifferFromTheDrawnOneAndFromOneAnother(Sample sample) {
    assertThat(Sample.poses(sample.device(), 16))
        .hasSize(16)
        .doesNotHaveDuplicates()
        .noneMatch(Pose::isDrawn);
  }
}
