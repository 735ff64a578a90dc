package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.Verdict;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is timed must be the right limit, found from the same program. */
class LimitBenchmarkTest {

  private static LimitBenchmark benchmark(RoughSample sample, PreparedBenchmark.Poses poses) {
    LimitBenchmark benchmark = new LimitBenchmark();
    benchmark.sample = sample;
    benchmark.poses = poses;
    benchmark.build();
    return benchmark;
  }

  /**
   * Both feet slip: H = 0.45·N, N + 0.2·H = W + λ·P, and moments about the foot 4·H + 3·0.2·H =
   * 1.5·W + 2.4·λ·P, with W : P = 20 : 60.
   */
  @Test
  void ladderSlipsWhereWorkedByHand() {
    double arm = 4.6 * 0.45 / 1.09;
    double expected = (arm - 1.5) / (2.4 - arm) * 20 / 60;

    assertThat(benchmark(RoughSample.LADDER, PreparedBenchmark.Poses.DRAWN).limit())
        .isCloseTo(expected, within(1e-9));
  }

  /** The topmost crate slides first, up its slope of 2°: λ · 50 N = 30 kg · g · tan(φ + 2°). */
  @Test
  void topmostCrateSlidesWhereWorkedByHand() {
    assertThat(benchmark(RoughSample.CRATE_STACK, PreparedBenchmark.Poses.DRAWN).limit())
        .isCloseTo(30 * 9.80665 * Math.tan(Math.atan(0.4) + Math.toRadians(2)) / 50, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "LADDER, DRAWN, 1",
    "LADDER, MOVED, 16",
    "CRATE_STACK, DRAWN, 1",
    "CRATE_STACK, MOVED, 16"
  })
  void limitsAgreeWithTheBareSimplex(
      RoughSample sample, PreparedBenchmark.Poses poses, int different) {
    LimitBenchmark library = benchmark(sample, poses);
    LimitBenchmark again = benchmark(sample, poses);
    LimitBenchmark simplex = benchmark(sample, poses);
    LimitBenchmark ready = benchmark(sample, poses);
    Set<Double> seen = new HashSet<>();
    for (int turn = 0; turn < 20; turn++) {
      double limit = library.limit();
      seen.add(limit);
      assertThat(again.limitAgain()).isEqualTo(limit);
      assertThat(simplex.simplex()).isCloseTo(limit, within(1e-9 * limit));
      assertThat(ready.simplexReady()).isCloseTo(limit, within(1e-9 * limit));
    }
    assertThat(seen).hasSize(different);
  }

  @ParameterizedTest
  @EnumSource(RoughSample.class)
  void sweepsAddUpToTheLimitsOfTheirPoses(RoughSample sample) {
    LimitSweepBenchmark benchmark = new LimitSweepBenchmark();
    benchmark.sample = sample;
    benchmark.build();
    double sum = 0;
    for (Pose pose : Sample.poses(sample.device(), 200)) {
      sum +=
          Limits.of(sample.device(), LoadCase.ALL_LOADS, pose, List.of())
              .greatest(Variation.of(sample.varied()))
              .orElseThrow();
    }

    assertThat(benchmark.sweep()).isCloseTo(sum, within(1e-9 * sum));
    assertThat(benchmark.objects()).isCloseTo(sum, within(1e-9 * sum));
    assertThat(benchmark.simplex()).isCloseTo(sum, within(1e-9 * sum));
  }

  /** A sweep makes nothing but what the library makes, and spares it copies of the rows. */
  @ParameterizedTest
  @EnumSource(RoughSample.class)
  void sweepsAllocateLessThanTheBareSimplex(RoughSample sample) {
    LimitSweepBenchmark benchmark = new LimitSweepBenchmark();
    benchmark.sample = sample;
    benchmark.build();

    assertThat(allocated(benchmark::sweep)).isLessThan(allocated(benchmark::simplex));
  }

  private static long allocated(DoubleSupplier work) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double sum = 0;
    long least = Long.MAX_VALUE;
    for (int turn = 0; turn < 5; turn++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      sum += work.getAsDouble();
      least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
    }
    assertThat(sum).isFinite();
    return least;
  }

  @ParameterizedTest
  @CsvSource({"LADDER, 2, 4", "CRATE_STACK, 6, 20"})
  void programsHaveTwoRowsForEachContact(RoughSample sample, int variables, int rows) {
    Device device = sample.device();
    ContactProgram program =
        ContactProgram.of(device, Pose.DRAWN, LoadCase.ALL_LOADS, sample.varied());

    assertThat(program.variables()).isEqualTo(variables);
    assertThat(program.size()).isEqualTo(rows);
  }

  /** For states the library chooses the same forces as free, in the same order. */
  @ParameterizedTest
  @EnumSource(RoughSample.class)
  void freeForcesAreThoseOfTheLibrary(RoughSample sample) {
    Device device = sample.device();
    for (Pose pose : Sample.poses(device, 16)) {
      sameFreeForces(device, pose, sample.varied());
    }
    sameFreeForces(device, Pose.DRAWN, sample.varied());
  }

  private static void sameFreeForces(Device device, Pose pose, String varied) {
    ForceSpace space = ForceSpace.of(device, pose);
    ContactEquations equations = ContactEquations.of(device, pose, LoadCase.ALL_LOADS, varied);
    assertThat(equations.freedom()).isEqualTo(space.freedom());
    for (int z = 0; z < space.freedom(); z++) {
      assertThat(equations.free(z)).containsExactly(space.free(z), within(1e-9));
    }
    double scale = space.scale(LoadCase.ALL_LOADS);
    double[] fixed =
        space.responseTo(
            space.turned(space.loads(LoadCase.ALL_LOADS, name -> !name.equals(varied))));
    double[] moving =
        space.responseTo(space.turned(space.loads(LoadCase.ALL_LOADS, varied::equals)));
    for (int j = 0; j < fixed.length; j++) {
      assertThat(equations.fixed()[j]).isCloseTo(fixed[j] / scale, within(1e-9));
      assertThat(equations.varied()[j]).isCloseTo(moving[j] / scale, within(1e-9));
    }
  }

  /**
   * For a number alone it takes those that it finds soonest: as many, and all forces that balance
   * the loads are the same, so it is the same program in other variables.
   */
  @ParameterizedTest
  @EnumSource(RoughSample.class)
  void freeForcesThatAreFoundSoonestSpanTheSame(RoughSample sample) {
    Device device = sample.device();
    for (Pose pose : Sample.poses(device, 16)) {
      ForceSpace space = ForceSpace.soonest(device, pose);
      ContactEquations equations =
          ContactEquations.of(device, pose, LoadCase.ALL_LOADS, sample.varied());
      assertThat(space.freedom()).isEqualTo(equations.freedom());
      for (int z = 0; z < equations.freedom(); z++) {
        assertSpanned(space, equations.free(z));
      }
      double scale = space.scale(LoadCase.ALL_LOADS);
      double[] apart =
          space.responseTo(space.turned(space.loads(LoadCase.ALL_LOADS, sample.varied()::equals)));
      for (int j = 0; j < apart.length; j++) {
        apart[j] = apart[j] / scale - equations.varied()[j];
      }
      assertSpanned(space, apart);
    }
  }

  /** Forces that balance nothing are the sum of what their own free ones add. */
  private static void assertSpanned(ForceSpace space, double[] forces) {
    double[] left = forces.clone();
    for (int z = 0; z < space.freedom(); z++) {
      double multiple = forces[space.freeColumn(z)];
      for (int j = 0; j < left.length; j++) {
        left[j] -= multiple * space.free(z)[j];
      }
    }
    for (double force : left) {
      assertThat(force).isCloseTo(0, within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource(RoughSample.class)
  void samplesHoldOrSlipAsDrawn(RoughSample sample) {
    Verdict verdict = Limits.of(sample.device()).verdict();

    assertThat(verdict.words()).isEqualTo(sample == RoughSample.LADDER ? "does not hold" : "holds");
  }

  @Test
  void otherPartsAreRefused() {
    Device lever = SampleDevices.pressLever();

    assertThatThrownBy(
            () -> ContactEquations.of(lever, Pose.DRAWN, LoadCase.ALL_LOADS, "own weight"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rough contacts only");
  }
}
