package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.explanation;
import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Mechanical advantage between all kinds of effort and resistance. */
class AdvantageTest {

  private static DeviceBuilder lever() {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("toe", 0.5, 0)
        .point("foot", 0.5, -1)
        .point("grip", 2, 0)
        .point("above", 2, 2)
        .member("lever", "hinge", "toe", "grip")
        .pin("hinge", "hinge", "lever", "ground");
  }

  @Test
  void effortAndResistanceMayBeAForceAndAStrut() {
    Device device =
        lever()
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .strut("ram", End.of("lever", "toe"), End.of("ground", "foot"))
            .advantage("hand", "ram")
            .build();
    // the strut is pushed: its tension is negative
    assertThat(number(device, "advantage")).isCloseTo(-4, within(1e-12));
    assertThat(number(device, "advantage.ideal")).isCloseTo(-4, within(1e-12));
  }

  @Test
  void effortAndResistanceMayBeALineAndAWeight() {
    Device device =
        lever()
            .weight("barrel", "lever", "toe", 100)
            .line("rope", End.of("lever", "grip"), End.of("ground", "above"))
            .advantage("rope", "barrel")
            .build();
    assertThat(number(device, "advantage")).isCloseTo(4, within(1e-12));
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
  }

  @Test
  void effortAndResistanceMayBothBeLetGo() {
    Device device =
        lever()
            .strut("ram", End.of("lever", "toe"), End.of("ground", "foot"))
            .line("rope", End.of("lever", "grip"), End.of("ground", "above"))
            .advantage("rope", "ram")
            .build();
    // both together are one restraint too many, so there is no ratio of forces
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
    assertThat(explanation(Balance.of(device), "advantage"))
        .isEqualTo("statics alone does not fix both forces");
    assertThat(Balance.of(device).advantage().orElseThrow())
        .isInstanceOf(Advantage.IdealOnly.class);
  }

  @Test
  void twoCouplesHaveAnAdvantage() {
    Device device =
        Device.named("pair of arms")
            .point("a", 0, 0)
            .point("b", 3, 0)
            .point("p", 1, 0)
            .member("left", "a", "p")
            .member("right", "p", "b")
            .pin("left", "a", "left", "ground")
            .pin("right", "b", "right", "ground")
            .roller("touch", "p", "left", "right", Direction.UP)
            .load(new Couple("turn", "left", -6))
            .load(
                new Sought("hold", Sought.Want.COUPLE, "right", Optional.empty(), Optional.empty()))
            .advantage("turn", "hold")
            .build();
    // arms of 1 and 2 m: the right one turns half as fast, the other way
    assertThat(number(device, "hold")).isCloseTo(-12, within(1e-12));
    assertThat(number(device, "advantage")).isCloseTo(2, within(1e-12));
    assertThat(number(device, "advantage.ideal")).isCloseTo(2, within(1e-12));
  }

  @Test
  void aSoughtMassCountsByItsWeight() {
    Device device =
        lever()
            .force("hand", "lever", "grip", Vector.of(0, 100))
            .load(
                new Sought(
                    "barrel", Sought.Want.MASS, "lever", Optional.of("toe"), Optional.empty()))
            .advantage("hand", "barrel")
            .build();
    assertThat(number(device, "barrel.mass")).isCloseTo(400 / 9.80665, within(1e-12));
    assertThat(number(device, "advantage")).isCloseTo(4, within(1e-12));
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
  }

  @Test
  void aCoupleAndAForceHaveNone() {
    Device device =
        lever()
            .load(new Couple("turn", "lever", 6))
            .sought("ram", "lever", "toe", Direction.UP)
            .advantage("turn", "ram")
            .build();
    assertThat(explanation(Balance.of(device), "advantage.ideal"))
        .isEqualTo("the one is a couple and the other a force");
    assertThat(explanation(Balance.of(device), "advantage")).contains("couple");
  }

  @Test
  void whereNothingMovesThereIsNone() {
    Device device =
        lever()
            .strut("prop", End.of("lever", "toe"), End.of("ground", "foot"))
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .force("load", "lever", "toe", Vector.of(0, -100))
            .advantage("hand", "load")
            .build();
    assertThat(explanation(Balance.of(device), "advantage.ideal")).contains("nothing moves");
    assertThat(Balance.of(device).advantage().orElseThrow())
        .isInstanceOfSatisfying(
            Advantage.ActualOnly.class, only -> assertThat(only.actual()).isEqualTo(1));
  }

  @Test
  void anEffortAlongTheLeverDoesNoWork() {
    Device device =
        lever()
            .force("hand", "lever", "grip", Vector.of(100, 0))
            .sought("ram", "lever", "toe", Direction.UP)
            .advantage("hand", "ram")
            .build();
    assertThat(explanation(Balance.of(device), "advantage.ideal"))
        .isEqualTo("the effort does no work on what can move");
  }

  @Test
  void aResistanceThatDoesNotMoveIsADeadCentre() {
    Device device =
        lever()
            .force("hand", "lever", "grip", Vector.of(0, 100))
            .sought("ram", "lever", "toe", Direction.RIGHT)
            .advantage("hand", "ram")
            .build();
    assertThat(explanation(Balance.of(device), "advantage.ideal")).contains("a dead centre");
  }

  @Test
  void twoFreeMotionsWithDifferentRatiosHaveNone() {
    Device device =
        lever()
            .member("second", "grip", "above")
            .pin("knee", "grip", "lever", "second")
            .force("hand", "second", "above", Vector.of(30, 100))
            .sought("ram", "lever", "toe", Direction.DOWN)
            .advantage("hand", "ram")
            .build();
    assertThat(explanation(Balance.of(device), "advantage.ideal")).contains("2 free motions");
    assertThat(explanation(Balance.of(device), "advantage")).contains("2 free motions");
  }

  @Test
  void withoutBalanceOnlyTheRatioOfVelocitiesIsTold() {
    Device device =
        lever()
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .force("load", "lever", "toe", Vector.of(0, 100))
            .advantage("hand", "load")
            .build();
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
    assertThat(explanation(Balance.of(device), "advantage")).contains("not in balance");
  }

  @Test
  void anEffortOfZeroHasNoRatioOfForces() {
    Device device =
        lever()
            .force("load", "lever", "toe", Vector.of(100, 0))
            .sought("hand", "lever", "grip", Direction.UP)
            .force("stone", "lever", "toe", Vector.of(0, -1))
            .force("counter", "lever", "toe", Vector.of(0, 1))
            .advantage("hand", "stone")
            .build();
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
    assertThat(explanation(Balance.of(device), "advantage")).isEqualTo("the effort is zero");
  }

  @Test
  void frictionInAPinLeavesTheIdealOne() {
    Device device =
        Device.named("rusty lever")
            .point("hinge", 0, 0)
            .point("toe", 0.5, 0)
            .point("grip", 2, 0)
            .member("lever", "hinge", "toe", "grip")
            .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.01, 0.3))
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .sought("ram", "lever", "toe", Direction.UP)
            .advantage("hand", "ram")
            .build();
    assertThat(number(device, "advantage.ideal")).isCloseTo(4, within(1e-12));
    assertThat(explanation(Balance.of(device), "advantage")).contains("friction in hinge");
  }

  @Test
  void withoutAStatedPairThereIsNone() {
    assertThat(Balance.of(lever().build()).advantage()).isEmpty();
  }
}
