package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ropes through blocks, with and without losses, and screws. */
class TackleTest {

  @ParameterizedTest
  @CsvSource({
    "1, 1, 1000",
    "2, 1, 500",
    "5, 1, 200",
    "2, 0.9, 584.795321637",
    "4, 0.95, 283.737748293"
  })
  void thePullOfATackle(int parts, double efficiency, double pull) {
    Device device = TackleProperties.tackle(parts, efficiency, Reeving.Hauling.RAISING);
    // 1000 / (η + η² + … + η^n)
    assertThat(number(device, "pull")).isCloseTo(pull, within(1e-6));
    assertThat(number(device, "advantage.ideal")).isCloseTo(parts, within(1e-9));
    assertThat(number(device, "advantage")).isCloseTo(1000 / pull, within(1e-8));
  }

  @Test
  void loweringTheTensionRisesFromTheHandOn() {
    Device device = TackleProperties.tackle(2, 0.8, Reeving.Hauling.LOWERING);
    // 1000 / (1/0.8 + 1/0.64)
    assertThat(number(device, "pull")).isCloseTo(1000 / 2.8125, within(1e-9));
    assertThat(number(device, "rope.end tension")).isCloseTo(1000 / 2.8125 / 0.64, within(1e-9));
  }

  /**
   * A rope straight through a block that slides along it: the block may go either way without
   * changing the rope's length, but the loss at its sheave holds a push of 10 N: T − 0.9·T = 10.
   */
  @Test
  void whatOnlyALossHoldsIsFreeToMove() {
    Device device =
        Device.named("block on a rope")
            .point("left", -1, 0)
            .point("middle", 0, 0)
            .point("right", 1, 0)
            .member("block", "middle")
            .connect(
                new bellcrank.statics.device.Guide(
                    "bed", "middle", "block", "ground", Direction.RIGHT))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "left"),
                        Stop.sheave("block", "middle", 0, Turn.CLOCKWISE),
                        Stop.end("ground", "right")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .force("push", "block", "middle", Vector.of(10, 0))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(device, "rope.tension")).isCloseTo(100, within(1e-9));
    assertThat(balance.mobility().freedoms()).hasSize(1);
    assertThat(balance.freedoms()).hasSize(1);
    assertThat(balance.freedoms().get(0).words()).startsWith("block slides");
  }

  @Test
  void aRopeIsLetGoWhenItIsTheEffortItself() {
    Device device =
        Device.named("hoist")
            .point("top", 0, 3)
            .point("hook", 0, 0)
            .point("winch", 1, 0)
            .member("block", "hook")
            .connect(
                new bellcrank.statics.device.Guide("bed", "hook", "block", "ground", Direction.UP))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("ground", "winch", 0.1, Turn.CLOCKWISE),
                        Stop.sheave("ground", "top", 0.05, Turn.COUNTER_CLOCKWISE),
                        Stop.sheave("block", "hook", 0, Turn.COUNTER_CLOCKWISE),
                        Stop.end("ground", "top")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("load", "block", "hook", Vector.of(0, -1000))
            .advantage("rope", "load")
            .build();
    Balance balance = Balance.of(device);
    double ideal = number(balance, "advantage.ideal");
    assertThat(number(balance, "advantage")).isCloseTo(ideal, within(1e-9));
    assertThat(ideal).isCloseTo(1000 / number(balance, "rope"), within(1e-9)).isBetween(1.99, 2.0);
  }

  @Test
  void aDrumIsTurnedByItsRadius() {
    Device device =
        Device.named("windlass")
            .point("axle", 0, 0)
            .point("bucket", 0.1, -3)
            .member("drum", "axle")
            .member("bucket", "bucket")
            .pin("axle", "axle", "drum", "ground")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("drum", "axle", 0.1, Turn.CLOCKWISE),
                        Stop.end("bucket", "bucket")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("weight", "bucket", "bucket", Vector.of(0, -200))
            .load(
                new bellcrank.statics.device.Sought(
                    "crank",
                    bellcrank.statics.device.Sought.Want.COUPLE,
                    "drum",
                    java.util.Optional.empty(),
                    java.util.Optional.empty()))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "rope")).isCloseTo(200, within(1e-12));
    assertThat(number(balance, "crank")).isCloseTo(20, within(1e-12));
    assertThat(number(balance, "crank.moment about axle")).isCloseTo(20, within(1e-12));
    assertThat(number(balance, "rope.moment about axle on drum")).isCloseTo(-20, within(1e-12));
    assertThat(number(balance, "rope.y on bucket")).isCloseTo(200, within(1e-12));
  }

  private static Device jack(double lead, double friction, double load) {
    return Device.named("press screw")
        .point("foot", 0, 0)
        .point("head", 0, 0.5)
        .member("plate", "head")
        .connect(new bellcrank.statics.device.Guide("bed", "head", "plate", "ground", Direction.UP))
        .connect(
            new Screw(
                "screw", End.of("plate", "head"), End.of("ground", "foot"), lead, 0.02, friction))
        .force("load", "plate", "head", Vector.of(0, -load))
        .build();
  }

  // F·r·tan(φ ± α) with tan φ = μ, tan α = lead / 2πr: textbook formula, from memory
  @Test
  void aScrewIsTurnedAgainstSlopeAndFriction() {
    Device device = jack(0.006, 0.15, 5000);
    double alpha = Math.atan(0.006 / (2 * Math.PI * 0.02));
    double phi = Math.atan(0.15);
    assertThat(number(device, "screw.compression")).isCloseTo(5000, within(1e-9));
    assertThat(number(device, "screw.raising"))
        .isCloseTo(5000 * 0.02 * Math.tan(phi + alpha), within(1e-9));
    assertThat(number(device, "screw.lowering"))
        .isCloseTo(5000 * 0.02 * Math.tan(phi - alpha), within(1e-9));
  }

  @Test
  void aSteepSmoothScrewRunsDownByItself() {
    assertThat(number(jack(0.06, 0.02, 100), "screw.lowering")).isNegative();
  }

  @Test
  void aPulledScrewIsTurnedAsHardAsAPushedOne() {
    assertThat(number(jack(0.006, 0.15, -5000), "screw.raising"))
        .isCloseTo(number(jack(0.006, 0.15, 5000), "screw.raising"), within(1e-9));
  }

  @Test
  void aRoughSteepScrewBinds() {
    Balance balance = Balance.of(jack(0.13, 1.0, 100));
    assertThat(reason(balance, "screw.raising")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(number(balance, "screw.lowering")).isFinite();
  }
}
