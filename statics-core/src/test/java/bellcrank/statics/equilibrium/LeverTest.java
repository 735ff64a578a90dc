package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.force;
import static bellcrank.statics.equilibrium.Si.length;
import static bellcrank.statics.equilibrium.Si.moment;
import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Levers whose answers are known in closed form. */
class LeverTest {

  private static final double CLOSE = 1e-9;

  private static Device wrench(double x, double y) {
    return Device.named("wrench on a barrel tap")
        .point("nut", 0, 0)
        .point("grip", x, y)
        .member("wrench", "nut", "grip")
        .clamp("nut", "nut", "wrench", "ground")
        .force("hand", "wrench", "grip", Vector.of(0, -force("15 lbf")))
        .build();
  }

  // common practice, no source
  @Test
  void aPullOfFifteenPoundsOnFourInchesTurnsWithSixtyInchPounds() {
    assertThat(number(wrench(length("4 in"), 0), "hand.moment about nut"))
        .isCloseTo(-moment("60 in·lbf"), within(CLOSE));
    assertThat(number(wrench(length("4 in"), 0), "nut.couple"))
        .isCloseTo(moment("60 in·lbf"), within(CLOSE));
  }

  // common practice, no source
  @Test
  void onTenInchesItTurnsWithOneHundredFiftyInchPounds() {
    assertThat(number(wrench(length("10 in"), 0), "nut.couple"))
        .isCloseTo(moment("150 in·lbf"), within(CLOSE));
  }

  // common practice, no source: only the arm square to the force counts
  @Test
  void withAPerpendicularArmOfThreeInchesItTurnsWithFortyFiveInchPounds() {
    assertThat(number(wrench(length("3 in"), length("9 in")), "nut.couple"))
        .isCloseTo(moment("45 in·lbf"), within(CLOSE));
  }

  private static Device bellCrank(double resistanceArm) {
    return Device.named("bell crank")
        .point("foot", 0, 0)
        .point("head", 0, length("48 in"))
        .point("toe", resistanceArm, 0)
        .point("middle", 0, length("20 in"))
        .member("crank", "head", "foot", "toe")
        .pin("foot", "foot", "crank", "ground")
        .force("pull", "crank", "head", Vector.of(-force("600 lbf"), 0))
        .sought("lift", "crank", "toe", Direction.DOWN)
        .advantage("pull", "lift")
        .build();
  }

  // common practice, no source
  @Test
  void sixHundredPoundsAtFortyEightInchesTurnWithTwentyFourHundredFootPounds() {
    assertThat(number(bellCrank(length("16 in")), "pull.moment about foot"))
        .isCloseTo(moment("2400 ft·lbf"), within(1e-8));
  }

  // common practice, no source
  @Test
  void againstAnArmOfSixteenInchesTheyHoldEighteenHundredPounds() {
    Device device = bellCrank(length("16 in"));
    assertThat(number(device, "lift")).isCloseTo(force("1800 lbf"), within(1e-8));
    assertThat(number(device, "advantage")).isCloseTo(3, within(1e-12));
    assertThat(number(device, "advantage.ideal")).isCloseTo(3, within(1e-12));
  }

  // common practice, no source
  @Test
  void againstAnArmOfEightInchesTheRatioIsSix() {
    assertThat(number(bellCrank(length("8 in")), "advantage")).isCloseTo(6, within(1e-12));
  }

  // common practice, no source
  @Test
  void theFootCarriesBothForces() {
    Device device = bellCrank(length("16 in"));
    assertThat(number(device, "foot.x on ground")).isCloseTo(-force("600 lbf"), within(1e-8));
    assertThat(number(device, "foot.y on ground")).isCloseTo(-force("1800 lbf"), within(1e-8));
    assertThat(number(device, "foot.x on crank")).isCloseTo(force("600 lbf"), within(1e-8));
  }

  // common practice, no source
  @Test
  void aWeightInLineWithTheFootGoesStraightIntoIt() {
    double mass = force("40 lbf") / 9.80665;
    Device device =
        bellCrank(length("16 in")).toBuilder()
            .weight("own weight", "crank", "middle", mass)
            .build();
    assertThat(number(device, "lift")).isCloseTo(force("1800 lbf"), within(1e-8));
    assertThat(number(device, "foot.y on ground")).isCloseTo(-force("1840 lbf"), within(1e-8));
  }

  @Test
  void aWeightOnTheArmChangesTheActualAdvantageOnly() {
    double mass = force("40 lbf") / 9.80665;
    Device device =
        bellCrank(length("16 in")).toBuilder().weight("own weight", "crank", "toe", mass).build();
    assertThat(number(device, "advantage.ideal")).isCloseTo(3, within(1e-12));
    assertThat(number(device, "advantage")).isCloseTo(1760.0 / 600, within(1e-12));
  }

  @Test
  void onTheOtherSideTheToeIsPressedDown() {
    Device pushed = bellCrank(-length("16 in"));
    assertThat(number(pushed, "lift")).isCloseTo(-force("1800 lbf"), within(1e-8));
    assertThat(number(pushed, "advantage.ideal")).isCloseTo(-3, within(1e-12));
  }
}
