package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class YardstickTest {

  private static final double RELATIVE = 1e-9;

  private static void sameAnswers(Device device, DenseSolver solver) {
    Prepared.Buffer buffer = Prepared.of(device).buffer();
    Yardstick yardstick = Yardstick.of(device, solver);
    LoadCase heavier = new LoadCase("heavier", Map.of(), 1.3);
    List<Pose> poses = new ArrayList<>(Sample.poses(device, 5));
    poses.add(Pose.DRAWN);
    for (Pose pose : poses) {
      double[] expected = yardstick.solve(pose, heavier);
      assertThat(buffer.solve(pose, heavier)).isTrue();
      assertThat(buffer.residual()).isLessThan(1e-12);
      double largest = 0;
      for (double value : expected) {
        largest = Math.max(largest, Math.abs(value));
      }
      for (int k = 0; k < expected.length; k++) {
        assertThat(buffer.value(new Prepared.Slot(k, 1)))
            .as("unknown %d at %s", k, pose)
            .isCloseTo(expected[k], within(RELATIVE * largest));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void luGivesTheAnswersOfThePreparedDevice(Sample sample) {
    Device device = sample.device();
    sameAnswers(device, EjmlSolver.lu(OneOffBenchmark.unknowns(device)));
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void qrGivesTheAnswersOfThePreparedDevice(Sample sample) {
    Device device = sample.device();
    sameAnswers(device, EjmlSolver.qr(OneOffBenchmark.unknowns(device)));
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void anotherLibraryGivesTheAnswersOfThePreparedDevice(Sample sample) {
    Device device = sample.device();
    sameAnswers(device, CommonsSolver.lu(OneOffBenchmark.unknowns(device)));
  }

  @Test
  void trussGivesTheAnswersOfThePreparedDevice() {
    Device truss = SampleDevices.simpleTruss(41);
    sameAnswers(truss, EjmlSolver.lu(OneOffBenchmark.unknowns(truss)));
  }

  @Test
  void scissorChainGivesTheAnswersOfThePreparedDevice() {
    Device chain = SampleDevices.scissorChain(12);
    sameAnswers(chain, EjmlSolver.lu(OneOffBenchmark.unknowns(chain)));
  }

  @Test
  void partsThatItDoesNotKnowAreRefused() {
    Device clamped =
        Device.named("post")
            .point("foot", 0, 0)
            .point("head", 0, 1)
            .member("post", "foot", "head")
            .clamp("base", "foot", "post", Ground.NAME)
            .force("push", "post", "head", Vector.of(1, 0))
            .build();

    assertThatThrownBy(
            () -> Yardstick.of(clamped, EjmlSolver.lu(3)).solve(Pose.DRAWN, LoadCase.ALL_LOADS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("base");
  }

  @Test
  void singularEquationsAreRefused() {
    DenseSolver solver = CommonsSolver.lu(2);
    solver.clear();
    solver.add(0, 0, 1);
    solver.addRight(0, 1);

    assertThatThrownBy(solver::solve).isInstanceOf(IllegalStateException.class);
  }
}
