package bellcrank.examples.rig;

import static bellcrank.statics.harness.StaticsAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * How to test a rig of your own: what was measured on it is held against what the model says. The
 * rig is the barrel derrick; a spring balance at the crank was read with three barrels, while the
 * rope was hauled in, while it was let out, and at rest. To make it yours, put your device and your
 * readings in place of these.
 */
final class BarrelDerrickRigTest {

  /** Share of the tension that a sheave passes on; common practice, no source. */
  private static final double SHEAVE = 0.93;

  private static Device derrick(String barrel, Reeving.Hauling hauling) {
    double weight = Quantity.parse(barrel, Dimension.FORCE).si();
    return Device.named("barrel derrick")
        .point("foot", 0, 0)
        .point("anchor", -3.6, 0)
        .point("heel", 0.2, 0.6)
        .point("axle", 0.4, 1.2)
        .point("head", 1.2, 3.6)
        .point("tip", 2.8, 2.4)
        .point("middle of the jib", 1.5, 1.5)
        .point("handle", 0.08, 1.44)
        .member("pole", "foot", "heel", "axle", "head")
        .member("jib", "heel", "middle of the jib", "tip")
        .member("winch", "axle", "handle")
        .pin("foot", "foot", "pole", "ground")
        .connect(new Line("stay", End.of("pole", "head"), End.of("ground", "anchor")))
        .pin("heel", "heel", "jib", "pole")
        .pin("axle", "axle", "winch", "pole")
        .connect(
            new Reeving(
                "rope",
                List.of(
                    new Stop(Stop.Kind.DRUM, "winch", "axle", 0.05, Turn.CLOCKWISE),
                    Stop.sheave("pole", "head", 0, Turn.CLOCKWISE),
                    Stop.end("jib", "tip")),
                SHEAVE,
                hauling))
        .force("jib's weight", "jib", "middle of the jib", Vector.of(0, -120))
        .force("barrel", "jib", "tip", Vector.of(0, -weight))
        .sought("hand", "winch", "handle", Direction.from(-3, -4))
        .build();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/rig-readings/barrel-derrick.csv", numLinesToSkip = 2)
  void theBalanceAtTheCrankReadsWhatTheModelSays(
      String barrel, String haulingIn, String lettingOut, String atRest, String accuracy) {
    Device raising = derrick(barrel, Reeving.Hauling.RAISING);
    Device lowering = derrick(barrel, Reeving.Hauling.LOWERING);
    assertThat(raising).as("hauling in").answers("hand").isCloseTo(haulingIn, accuracy);
    assertThat(lowering).as("letting out").answers("hand").isCloseTo(lettingOut, accuracy);
    // At rest friction may help either way: the reading lies between the two.
    assertThat(raising).as("at rest").answers("hand").isAtLeast(plus(atRest, -1, accuracy));
    assertThat(lowering).as("at rest").answers("hand").isAtMost(plus(atRest, 1, accuracy));
  }

  /** A reading with its accuracy added or taken off. */
  private static String plus(String reading, int sign, String accuracy) {
    double sum =
        Quantity.parse(reading, Dimension.FORCE).si()
            + sign * Quantity.parse(accuracy, Dimension.FORCE).si();
    return UnitSystem.SI.format(sum, Dimension.FORCE, 6);
  }

  @Test
  void theLargestBarrelIsHeldWithTheRopeGivingFirst() {
    Device derrick = derrick("600 N", Reeving.Hauling.RAISING);
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE)
            .with(new Rating("rope", "rope", 1500, "invented", 1, 0, List.of()))
            .with(new Rating("stay", "stay", 4000, "invented", 1, 0, List.of()));
    assertThat(derrick)
        .isHeld()
        .carries("stay")
        .between("0.5 kN", "1 kN")
        .and()
        .holdsUntilAtLeast(Variation.of("barrel"), 2)
        .sizedBy(sizing)
        .asLoadsGrow("barrel")
        .firstToGiveWayIs("rope", "working load limit");
  }

  @Test
  void aReadingThatDisagreesIsToldWithTheForcesOnTheCrank() {
    Device derrick = derrick("600 N", Reeving.Hauling.RAISING);
    assertThatThrownBy(() -> assertThat(derrick).answers("hand").isCloseTo("84 N", "2 N"))
        .isInstanceOf(AssertionError.class)
        .hasMessage(
            """
            hand on barrel derrick is expected to be within 2 N of 84 N, but it is 76.88 N: \
            7.118 N (8.5 %) below it.
            Free body of winch:
              force         size     direction                             x         y         at
              hand          76.88 N  left and down at 53.13° to the level  -46.13 N  -61.51 N  handle
              axle          542.1 N  left and down at 72.85° to the level  -159.9 N  -518.0 N  axle
              rope          615.1 N  right and up at 70.43° to the level   206.0 N   579.5 N   \
            (0.3529 m, 1.217 m)
              all together  0 N                                            0 N       0 N""");
  }
}
