package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Balances in which forces that statics leaves open are known. */
class KnownForcesTest {

  /** A mast 3 m high between two stays at 45°, with 100 N of wind to the right at its top. */
  private static Device mast() {
    return Device.named("mast")
        .point("foot", 0, 0)
        .point("top", 0, 3)
        .point("west", -3, 0)
        .point("east", 3, 0)
        .member("mast", "foot", "top")
        .pin("foot", "foot", "mast", "ground")
        .connect(new Line("west", End.of("mast", "top"), End.of("ground", "west")))
        .connect(new Line("east", End.of("mast", "top"), End.of("ground", "east")))
        .load(new Force("wind", "mast", "top", Vector.of(100, 0)))
        .build();
  }

  /** East pulls 50 N, so west pulls 100·√2 + 50 N, and the foot takes both pulls down. */
  @Test
  void aMeasuredTensionTellsTheRest() {
    Balance balance = Balance.of(mast());
    assertThat(balance.components())
        .map(Ask::text)
        .containsExactly("foot.x", "foot.y", "west.tension", "east.tension");
    double west = 100 * Math.sqrt(2) + 50;
    double down = (west + 50) / Math.sqrt(2);

    Balance known = balance.withForces(List.of(0.0, down, west, 50.0));

    assertThat(known.residual()).isLessThan(1e-15);
    assertThat(known.number("west")).hasValueCloseTo(west, within(1e-12));
    assertThat(known.number("group(mast).y from ground")).hasValueCloseTo(0.0, within(1e-12));
    assertThat(known.violations()).isEmpty();
    assertThat(known.undetermined()).isEmpty();
  }

  @Test
  void forcesThatDoNotFitLeaveAResidual() {
    Balance wrong = Balance.of(mast()).withForces(List.of(0.0, 0.0, 100.0, 0.0));

    assertThat(wrong.residual()).isGreaterThan(0.1);
  }

  @Test
  void aPullThatIsKnownToPushBreaksACondition() {
    double down = -50 / Math.sqrt(2) + (100 * Math.sqrt(2) - 50) / Math.sqrt(2);
    Balance pushed =
        Balance.of(mast()).withForces(List.of(0.0, down, 100 * Math.sqrt(2) - 50, -50.0));

    assertThat(pushed.residual()).isLessThan(1e-15);
    assertThat(pushed.violations()).extracting(Violation::part).containsExactly("east");
  }

  /** Of a dry pin the friction couple is a component; through three bodies each has its own. */
  @Test
  void dryPinsAndSoughtQuantitiesAreComponents() {
    Device device =
        Device.named("shears")
            .point("P", 0, 0)
            .point("A", 1, 0)
            .member("one", "P", "A")
            .member("two", "P")
            .connect(new Pin("pin", "P", List.of("one", "two", "ground"), 0.1, 0.2))
            .load(
                new Sought("couple", Sought.Want.COUPLE, "two", Optional.empty(), Optional.empty()))
            .sought("hand", "one", "A", Direction.UP)
            .build();

    assertThat(Balance.of(device).components())
        .map(Ask::text)
        .containsExactly(
            "pin.x on one",
            "pin.y on one",
            "pin.couple on one",
            "pin.x on two",
            "pin.y on two",
            "pin.couple on two",
            "pin.x on ground",
            "pin.y on ground",
            "pin.couple on ground",
            "couple",
            "hand");
  }

  @Test
  void valuesMustBeAsManyAndFinite() {
    Balance balance = Balance.of(mast());
    assertThatThrownBy(() -> balance.withForces(List.of(1.0)))
        .isInstanceOf(ModelException.class)
        .hasMessage("mast: forces is 1 values; wanted: 4 values");
    assertThatThrownBy(() -> balance.withForces(List.of(0.0, 0.0, Double.NaN, 0.0)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("finite numbers");
  }
}
