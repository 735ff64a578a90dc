package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A built-in beam of 2 m with 10 N down at its tip: reactions 0 N, 10 N and 20 N·m. */
class ResidualTest {

  private static final double SCALE = 10;

  private static double residual(double x, double y, double couple) {
    Device beam =
        Device.named("built-in beam")
            .point("wall", 5, 1)
            .point("tip", 7, 1)
            .member("beam", "wall", "tip")
            .clamp("wall", "wall", "beam", "ground")
            .force("load", "beam", "tip", Vector.of(0, -10))
            .build();
    Assembly assembly = Assembly.of(beam);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(placements, LoadCase.ALL_LOADS, loads);
    // the couple's unknown is couple / size
    double[] unknowns = {x, y, couple / beam.size()};
    return Residual.of(actions, unknowns, loads, assembly.memberCount(), SCALE);
  }

  @Test
  void theRightReactionsLeaveNothing() {
    assertThat(residual(0, 10, 20)).isLessThan(1e-15);
  }

  /**
   * A force that is wrong by d leaves d; a couple that is wrong by d leaves d over the size of 2 m.
   */
  @ParameterizedTest
  @CsvSource({
    "1e-6, 0, 0, 1e-7",
    "-1e-6, 0, 0, 1e-7",
    "0, 1e-6, 0, 1e-7",
    "0, -3, 0, 0.3",
    "0, 0, 1e-6, 5e-8",
    "0, 0, -4, 0.2",
    "2, 1, 0, 0.2",
  })
  void aWrongReactionLeavesItsErrorRelativeToTheLargestForce(
      double x, double y, double couple, double left) {
    assertThat(residual(x, 10 + y, 20 + couple)).isCloseTo(left, within(1e-14));
  }

  @Test
  void withoutAnyForceThereIsNothingToCompareWith() {
    Device beam =
        Device.named("unloaded beam")
            .point("wall", 0, 0)
            .point("tip", 2, 0)
            .member("beam", "wall", "tip")
            .clamp("wall", "wall", "beam", "ground")
            .build();
    Assembly assembly = Assembly.of(beam);

    assertThat(Residual.of(assembly.actions(), new double[3], new Wrenches(1), 1, 0)).isZero();
  }

  /** A device that cannot balance leaves what its loads are: here all of the moment. */
  @Test
  void aDeviceOutOfBalanceHasAResidualOfTheSizeOfItsLoads() {
    Device lever =
        Device.named("loose lever")
            .point("hinge", 0, 0)
            .point("tip", 1, 0)
            .member("lever", "hinge", "tip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("load", "lever", "tip", Vector.of(0, -10))
            .build();

    assertThat(Solved.of(lever, LoadCase.ALL_LOADS, bellcrank.statics.device.Pose.DRAWN).residual())
        .isGreaterThan(0.1);
  }
}
