package bellcrank.statics.harness;

import static bellcrank.statics.harness.StaticsAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.Rules;
import bellcrank.statics.strength.TravelCapacity;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.AbstractStringAssert;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

final class StaticsAssertionsTest {

  private static Course luffing() {
    return (Course) Travel.of(Rigs.jib(), Drive.length("rope"), -2, 3);
  }

  private static void fails(ThrowingCallable assertion) {
    assertThatThrownBy(assertion).isInstanceOf(AssertionError.class);
  }

  private static AbstractStringAssert<?> mistake(ThrowingCallable assertion) {
    ModelException found = Assertions.catchThrowableOfType(ModelException.class, assertion);
    return assertThat(found).isNotNull().extracting(ModelException::getMessage).asString();
  }

  @Test
  void anAnswerIsHeldAgainstTextsWithUnits() {
    assertThat(Rigs.press())
        .isHeld()
        .answers("ram")
        .isBetween("1400 N", "1.41 kN")
        .isAtLeast("316 lbf")
        .isAtMost("1408 N")
        .isAtLeast("1408 N")
        .isCloseTo("1400 N", "8 N")
        .isCloseTo("1400 N", Percentage.withPercentage(0.6))
        .and()
        .answers("hinge.y on ground")
        .isCloseTo("1188 N", "1 N")
        .and()
        .answers("advantage")
        .isCloseTo("6.4", "0")
        .and()
        .answers("outcome")
        .isInWords("in balance");
  }

  @Test
  void aBareNumberIsInTheChosenUnits() {
    assertThat(Rigs.press()).answers("ram").isCloseTo("1408", "0.1");
    assertThat(Rigs.press()).inUnits(UnitSystem.US).answers("ram").isCloseTo("316.53", "0.01");
  }

  @Test
  void aZeroIsHeldToTheRoundingOfTheLoads() {
    assertThat(Rigs.press()).answers("hinge.x").isBetween("0 N", "0 N").isCloseTo("0 N", "0 N");
    fails(() -> assertThat(Rigs.press()).answers("hinge.y").isCloseTo("0 N", "1 N"));
  }

  @Test
  void aZeroIsHeldToTheWeightOfStrutsWhereTheyAreAllTheLoad() {
    Device trestle =
        Device.named("trestle")
            .point("left", 0, 0)
            .point("right", 1.9, 0)
            .point("top", 0.7, 1.1)
            .joint("top")
            .connect(new Strut("short leg", End.of("ground", "left"), End.of("top", "top"), 11))
            .connect(new Strut("long leg", End.of("ground", "right"), End.of("top", "top"), 17))
            .build();
    double heavier = 17 * Device.STANDARD_GRAVITY.norm();
    assertThat(LoadScale.of(Balance.of(trestle)).of(Dimension.FORCE))
        .isCloseTo(heavier, Assertions.within(1e-9));
    assertThat(trestle).answers("resultant.x").isCloseTo("0 N", "0 N");
  }

  @Test
  void anglesAreNearModuloAFullTurn() {
    assertThat(Rigs.press()).answers("hand.direction").isCloseTo("-90 deg", "0.1 deg");
    assertThat(Rigs.press()).answers("hand.direction").isCloseTo("630 deg", "0.1 deg");
    fails(() -> assertThat(Rigs.press()).answers("hand.direction").isCloseTo("-91 deg", "0.9 deg"));
  }

  @Test
  void theCaseIsChosenOrNamedByTheAsk() {
    assertThat(Rigs.pressInTwoCases())
        .answers("ram in light")
        .isCloseTo("704 N", "1 N")
        .and()
        .answers("ram")
        .isCloseTo("1408 N", "1 N")
        .and()
        .inCase("light")
        .answers("ram")
        .isCloseTo("704 N", "1 N");
  }

  @Test
  void thePoseIsChosen() {
    Pose turned = Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, Math.toRadians(30)));
    assertThat(Rigs.press())
        .inPose(turned)
        .as("as in the page for developers, but with this lever")
        .answers("ram")
        .isBetween("1350 N", "1400 N");
    fails(() -> assertThat(Rigs.press()).inPose(turned).answers("ram").isAtLeast("1400 N"));
  }

  @Test
  void theGroundIsChosen() {
    Device chest = Rigs.chest(0.5, 100);
    assertThat(chest).isHeld();
    Foundation soft =
        new Foundation(
            "floor", 0.6, Optional.of(new Presumptive(500, "stated")), 0, Optional.empty());
    assertThat(chest).on(soft).givesWay();
  }

  @Test
  void whatStaticsLeavesOpenIsHeldInEveryState() {
    assertThat(Rigs.ladder(0.35))
        .isHeld()
        .carries("boards")
        .between("207 N", "246 N")
        .atLeast("207.69 N")
        .atMost("246 N")
        .and()
        .answers("boards")
        .isUnanswered(Answer.Reason.UNDETERMINED);
    assertThat(Rigs.press()).carries("ram").between("1408 N", "1408 N");
    assertThat(Rigs.bench()).answers("left.x").isUnanswered(Answer.Reason.UNDETERMINED);
    fails(() -> assertThat(Rigs.bench()).carries("left.x").atLeast("-1000 kN"));
  }

  @Test
  void aForceWithoutEndKeepsNoLimitOnThatSide() {
    // wedged between its two rough posts the book may be pressed as hard as one likes
    assertThat(Rigs.wedged()).carries("left").atLeast("10 N");
    fails(() -> assertThat(Rigs.wedged()).carries("left").atMost("1000 kN"));
    fails(() -> assertThat(Rigs.wedged()).answers("left").isAtMost("1000 kN"));
  }

  @Test
  void whatHoldsCanRestAndDoesNotGiveWay() {
    assertThat(Rigs.ladder(0.35)).isHeld().canRest();
    fails(() -> assertThat(Rigs.ladder(0.35)).givesWay());
    assertThat(Rigs.ladder(0.2)).givesWay();
    fails(() -> assertThat(Rigs.ladder(0.2)).canRest());
    assertThat(Rigs.gate()).givesWay();
    fails(() -> assertThat(Rigs.gate()).isHeld());
  }

  @Test
  void whatHoldsOnlyOnceSeatedIsNotHeldButCanRest() {
    assertThat(Rigs.wedged()).canRest();
    assertThatThrownBy(() -> assertThat(Rigs.wedged()).isHeld())
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("only once seated, with a squeeze on left and right from before");
    fails(() -> assertThat(Rigs.wedged()).givesWay());
  }

  @Test
  void whatHasNothingToSpareIsNotHeldButCanRest() {
    assertThat(Rigs.chest(0.5, 225)).canRest();
    assertThatThrownBy(() -> assertThat(Rigs.chest(0.5, 225)).isHeld())
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("it is about to give way, with nothing to spare: floor tips");
  }

  @Test
  void aFreeMotionOnWhichTheseLoadsDoNoWorkIsNotHeldButCanRest() {
    Device idle =
        Rigs.loose().toBuilder().loadCase(new LoadCase("none", Map.of("bucket", 0.0), 1)).build();
    assertThat(idle).canRest();
    assertThatThrownBy(() -> assertThat(idle).isHeld())
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("in balance for these loads only: arm");
  }

  @Test
  void aDeviceHoldsUpToItsLimit() {
    assertThat(Rigs.chest(0.5, 150))
        .holdsUntilAtLeast("push", 1.5)
        .holdsUntilAtLeast("push", 0.5)
        .slipsNotBefore(Variation.of("push"), 5)
        .asLoadsGrow("push")
        .firstToGiveWayIs("floor");
    assertThat(Rigs.ladder(0.35))
        .holdsUntilAtLeast(Variation.place("picker", "foot", "top"), 3.54)
        .slipsNotBefore("floor", Variation.place("picker", "foot", "top"), 3.54);
    // the press seeks its ram, so it holds any hand
    assertThat(Rigs.press()).holdsUntilAtLeast("hand", 1000);
  }

  @Test
  void aDeviceThatNeedsALoadHoldsOnlyFromThereOn() {
    // 225 N tip the chest; a helper who pushes against it is needed
    Device helped =
        Rigs.chest(0.5, 300).toBuilder()
            .force("helper", "chest", "side", Vector.of(-50, 0))
            .build();
    assertThatThrownBy(() -> assertThat(helped).holdsUntilAtLeast("helper", 2))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("it holds only from 1.500 times helper on: floor tips");
    assertThat(helped).slipsNotBefore("floor", Variation.of("helper"), 2);
    Device sliding =
        Rigs.chest(0.2, 200).toBuilder()
            .force("helper", "chest", "side", Vector.of(-10, 0))
            .build();
    assertThatThrownBy(() -> assertThat(sliding).slipsNotBefore(Variation.of("helper"), 3))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("it holds only from 2.000 times helper on: floor slides");
  }

  @Test
  void limitsKeepTheirFriction() {
    Limits limits = Limits.of(Rigs.chest(0.5, 150));
    assertThat(limits).isHeld().holdsUntilAtLeast("push", 1.5);
    assertThat(limits.withFriction(0.4))
        .isHeld()
        .holdsUntilAtLeast(Variation.of("push"), 1.2)
        .asItVaries(Variation.of("push"))
        .firstToGiveWayIs("floor")
        .carries("floor.friction")
        .between("-150 N", "-150 N");
    fails(() -> assertThat(limits.withFriction(0.4)).holdsUntilAtLeast("push", 1.21));
  }

  @Test
  void aBalanceCountsAllPartsAsHolding() {
    Balance balance = Balance.of(Rigs.chest(0.1, 150));
    assertThat(Balance.of(Rigs.press())).isHeld().canRest().answers("ram").isAtLeast("1 kN");
    assertThat(balance).givesWay().carries("floor.friction").between("-150 N", "-150 N");
    fails(() -> assertThat(balance).isHeld());
    fails(() -> assertThat(balance).canRest());
    fails(() -> assertThat(Balance.of(Rigs.press())).givesWay());
    assertThat(balance).answers("verdict").isUnanswered(Answer.Reason.NOT_DECIDED);
    assertThat(Rigs.press()).answers("verdict").isInWords("holds");
  }

  @Test
  void whatGivesFirstIsNamedByPartAndCheck() {
    assertThat(Rigs.roof())
        .sizedBy(Rigs.roofSizing())
        .asLoadsGrow("snow")
        .firstToGiveWayIs("prop")
        .firstToGiveWayIs("prop", "column")
        .holdsUntilAtLeast("snow", 1.39);
    fails(() -> assertThat(Rigs.roof()).sizedBy(Rigs.roofSizing()).holdsUntilAtLeast("snow", 1.4));
    assertThat(Rigs.roof()).holdsUntilAtLeast("snow", 1.4);
    Capacity capacity = Capacity.of(Rigs.roof(), Rigs.roofSizing(), Variation.of("snow"));
    assertThat(capacity)
        .inUnits(UnitSystem.US)
        .firstToGiveWayIs("prop", "column")
        .firstToGiveWayIs("prop")
        .holdsUntilAtLeast(1.39);
    assertThat(TravelCapacity.of(luffing(), Rigs.jibSizing(), Variation.of("barrel")))
        .firstToGiveWayIs("rope", "working load limit")
        .holdsUntilAtLeast(1.25);
    // a rope of the chest's kind, to which nothing happens before the chest tips
    assertThat(Rigs.chest(0.5, 150))
        .sizedBy(Rigs.chestSizing(), Rules.of(Rigs.chestSizing().method()))
        .asLoadsGrow("push")
        .firstToGiveWayIs("floor")
        .firstToGiveWayIs("floor", "gives way");
  }

  @Test
  void anAdvantageIsHeldOverAllOfACourse() {
    assertThat(Rigs.jib()).advantageOver(luffing()).isAtLeast(0.75).isAtMost(2).isAtLeast("0.75");
    assertThat(luffing())
        .isDriven()
        .advantage()
        .isBetween("0.75", "2")
        .and()
        .answers("rope.tension")
        .isBetween("330 N", "0.88 kN")
        .and()
        .inUnits(UnitSystem.US)
        .answers("rope.tension")
        .isAtMost("198");
    fails(() -> assertThat(luffing()).advantage().isAtMost(1.9));
    fails(() -> assertThat(luffing()).advantage().isBetween("0.8", "3"));
    fails(() -> assertThat(luffing()).advantage().isBetween("0.7", "1.9"));
  }

  @Test
  void aTurnAndASlideAreToldByTheirDrive() {
    Device swing = Rigs.swing();
    assertThatThrownBy(
            () ->
                assertThat(Travel.of(swing, Drive.turn("arm"), -0.5, 0.5))
                    .answers("hand")
                    .isAtMost("49 N"))
        .hasMessageContaining("where arm has turned by ")
        .hasMessageContaining(" deg (");
    assertThatThrownBy(
            () ->
                assertThat(Travel.of(swing, Drive.slide("arm", "end", Direction.UP), -0.3, 0.3))
                    .answers("hand")
                    .isAtMost("49 N"))
        .hasMessageContaining("where end of arm has moved by ");
  }

  @Test
  void mistakesOfTheTestAreToldAsMistakesOfAModel() {
    mistake(() -> assertThat(Rigs.press()).answers("rma"))
        .isEqualTo(
            "ask rma: found \"rma\"; wanted: the name of a connection, load or sought quantity;"
                + " the nearest is \"ram\"");
    mistake(() -> assertThat(Rigs.press()).answers("ram").isAtMost("140 kg"))
        .startsWith("ram: limit is \"140 kg\"; wanted: a force; ");
    mistake(() -> assertThat(Rigs.press()).answers("ram").isCloseTo("1408 N", "2 m"))
        .startsWith("ram: limit is \"2 m\"; wanted: a force; ");
    mistake(() -> assertThat(Rigs.press()).answers("ram").isCloseTo("1408 N", "-2 N"))
        .isEqualTo("ram: allowed difference is -2 N; wanted: 0 or more");
    mistake(
            () ->
                assertThat(Rigs.press())
                    .answers("hinge.x")
                    .isCloseTo("0 N", Percentage.withPercentage(1)))
        .isEqualTo("hinge.x: allowed difference is 1 % of zero; wanted: a quantity of its own");
    mistake(() -> assertThat(Rigs.press()).answers("ram").isBetween("2 kN", "1 kN"))
        .isEqualTo("ram: limits is 2 kN and 1 kN; wanted: the smaller first");
    mistake(() -> assertThat(Rigs.press()).inCase("heavy")).contains("heavy");
    mistake(() -> assertThat(Balance.of(Rigs.pressInTwoCases())).answers("ram in light"))
        .isEqualTo("ask ram in light: case is \"light\"; wanted: full, in which this was solved");
    mistake(() -> assertThat(Rigs.chest(0.5, 1)).holdsUntilAtLeast("pull", 2)).contains("pull");
    mistake(() -> assertThat(Rigs.chest(0.5, 1)).holdsUntilAtLeast("push", Double.NaN))
        .isEqualTo("chest: limit is NaN; wanted: a finite number");
    mistake(() -> assertThat(Rigs.chest(0.5, 1)).firstToGiveWayIs("flor"))
        .isEqualTo("chest: connection is \"flor\"; wanted: one of: floor");
    mistake(() -> assertThat(Rigs.chest(0.5, 1)).slipsNotBefore("flor", Variation.of("push"), 1))
        .isEqualTo("chest: connection is \"flor\"; wanted: one of: floor");
    mistake(
            () ->
                assertThat(Rigs.ladder(0.35))
                    .holdsUntilAtLeast(Variation.place("picker", "foot", "rung"), 4))
        .contains("at most picker 2.600 m from foot towards rung, where the line ends");
    mistake(() -> assertThat(Rigs.roof()).firstToGiveWayIs("prop", "column"))
        .isEqualTo(
            "press-house roof: sizing is none; wanted: sections and details, chosen by sizedBy");
    mistake(
            () ->
                assertThat(Rigs.roof())
                    .sizedBy(Rigs.roofSizing())
                    .asItVaries(Variation.place("snow", "wall", "top"))
                    .firstToGiveWayIs("prop"))
        .contains("wanted: loads that grow");
    Capacity capacity = Capacity.of(Rigs.roof(), Rigs.roofSizing(), Variation.of("snow"));
    mistake(() -> assertThat(capacity).firstToGiveWayIs("porp"))
        .contains("one of: beam, wall, prop");
    mistake(() -> assertThat(capacity).holdsUntilAtLeast(-1)).contains("0 or more");
    mistake(() -> assertThat(Rigs.press()).advantageOver(luffing()))
        .isEqualTo("press lever: travel is of luffing jib; wanted: one of this device");
  }

  @Test
  void descriptionsStandInFront() {
    assertThatThrownBy(
            () -> assertThat(Rigs.press()).as("shed %d", 2).answers("ram").isAtMost("1 N"))
        .hasMessageStartingWith("[shed 2] ram on press lever is expected");
    assertThatThrownBy(() -> assertThat(Rigs.gate()).describedAs("100 % gate").isHeld())
        .hasMessageStartingWith("[100 % gate] gate without brace is expected");
    assertThatThrownBy(
            () -> assertThat(luffing()).as("hoist").answers("rope.tension").isAtMost("1 N"))
        .hasMessageStartingWith("[hoist] rope.tension on luffing jib");
  }

  @Test
  void severalFailuresAreCollectedBySoftAssertions() {
    SoftAssertions softly = new SoftAssertions();
    softly.check(() -> assertThat(Rigs.press()).answers("ram").isAtMost("1 N"));
    softly.check(() -> assertThat(Rigs.press()).isHeld());
    softly.check(() -> assertThat(Rigs.gate()).isHeld());
    assertThat(softly.assertionErrorsCollected()).hasSize(2);
  }
}
