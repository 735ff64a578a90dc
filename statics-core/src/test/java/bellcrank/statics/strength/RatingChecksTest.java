package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.checked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Rating.Reduction;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Working loads and notches against hand values. */
class RatingChecksTest {

  /**
   * A boom of 2 m hung level on a chain from its head to a hook 2 m above its hinge: 45°. A cask of
   * 1 kN at the head: the chain pulls by √2 kN.
   */
  private static DeviceBuilder boom() {
    return Device.named("boom")
        .point("hinge", 0, 0)
        .point("head", 2, 0)
        .point("hook", 0, 2)
        .member("boom", "hinge", "head")
        .pin("hinge", "hinge", "boom", "ground")
        .line("chain", new End("boom", "head"), new End("ground", "hook"))
        .force("cask", "boom", "head", Vector.of(0, -1000));
  }

  private static Checks checks(Device device, Method method, Detail... details) {
    Sizing sizing = Sizing.of(method);
    for (Detail detail : details) {
      sizing = sizing.with(detail);
    }
    return Checks.of(Balance.of(device), sizing);
  }

  /** The factor is in the limit: the same with both methods. */
  @Test
  void aLine() {
    for (Method method : Method.values()) {
      Checks checks = checks(boom().build(), method, Rating.of("chain", 2000, "tag of the chain"));
      Checked chain = checked(checks, "chain", "working load limit");
      assertThat(chain.demand()).isCloseTo(1000 * Math.sqrt(2), within(1e-6));
      assertThat(chain.resistance()).isEqualTo(2000);
      assertThat(chain.working(UnitSystem.SI)).isEqualTo("1414 N against 2000 N");
      assertThat(chain.margin())
          .isEqualTo(
              "strength divided by 1: not needed, the working load limit has its design factor in"
                  + " it");
    }
  }

  /** Two legs 30° off: √2/(2·cos 30°) = 0.81650 kN against 2 kN · 0.5 · 0.9. */
  @Test
  void legsAndReductions() {
    Rating sling =
        new Rating("sling", "chain", 2000, "tag", 2, Math.PI / 6, List.of())
            .with(new Reduction("bent over an edge", 0.5, "ours"))
            .with(new Reduction("wet", 0.9, "ours"));
    Checked one =
        checked(
            checks(boom().build(), Method.ALLOWABLE, sling), "chain", "sling: working load limit");

    assertThat(one.demand()).isCloseTo(816.497, within(1e-3));
    assertThat(one.resistance()).isCloseTo(900, within(1e-9));
    assertThat(one.working(UnitSystem.SI))
        .isEqualTo(
            "F/(n·cos α) = 1414 N / (2 × cos 30.00 deg) = 816.5 N against 2000 N × 0.5000 (bent over"
                + " an edge) × 0.9000 (wet) = 900.0 N");
  }

  /** The hinge pushes by √(1² + 0²) kN: 1 kN along the boom. */
  @Test
  void aFittingAtAPin() {
    Rating eye = new Rating("eye bolt", "hinge", 1500, "tag", 1, 0, List.of());
    Checked one =
        checked(
            checks(boom().build(), Method.ALLOWABLE, eye), "hinge", "eye bolt: working load limit");

    assertThat(one.demand()).isCloseTo(1000, within(1e-6));
  }

  @Test
  void countedLinesShare() {
    Checks checks =
        checks(boom().count("chain", 2).build(), Method.ALLOWABLE, Rating.of("chain", 2000, "tag"));

    assertThat(checked(checks, "chain", "working load limit").demand())
        .isCloseTo(500 * Math.sqrt(2), within(1e-6));
  }

  private static ChainSeat seat(String body, Direction depth) {
    return new ChainSeat("notch", "chain", body, depth, Math.PI / 2, 0.2);
  }

  private static double degrees(Checks checks) {
    return Math.toDegrees(checked(checks, "chain", "notch: seat in the notch").demand());
  }

  /** 45° off; the sides let it go up to 90° − 45° + arctan 0.2 = 56.31°. */
  @Test
  void aNotchInTheBoom() {
    Checks checks = checks(boom().build(), Method.ALLOWABLE, seat("boom", Direction.UP));

    Checked one = checked(checks, "chain", "notch: seat in the notch");
    assertThat(degrees(checks)).isCloseTo(45, within(1e-9));
    assertThat(Math.toDegrees(one.resistance())).isCloseTo(56.3099, within(1e-4));
    assertThat(one.working(UnitSystem.SI))
        .isEqualTo(
            "pushes 45.00 deg off the depth of the notch, against 90° − 90.00 deg/2 + arctan 0.2000"
                + " = 56.31 deg");
  }

  /** On the post the same chain pulls down and to the right. */
  @Test
  void aNotchInThePost() {
    assertThat(degrees(checks(boom().build(), Method.ALLOWABLE, seat("ground", Direction.DOWN))))
        .isCloseTo(45, within(1e-9));
    assertThat(degrees(checks(boom().build(), Method.ALLOWABLE, seat("ground", Direction.UP))))
        .isCloseTo(135, within(1e-9));
  }

  /** The boom raised by 90°, its head at the hook's height but turned: the notch turns with it. */
  @Test
  void theNotchTurnsWithItsMember() {
    Pose raised = Pose.DRAWN.with("boom", Frame.turnAbout(Point.ORIGIN, Math.toRadians(-45)));
    Checks checks =
        Checks.of(
            Balance.of(boom().build(), LoadCase.ALL_LOADS, raised),
            Sizing.of(Method.ALLOWABLE).with(seat("boom", Direction.UP)));

    // the head is at (√2, −√2), the chain leads from there to (0, 2); the depth points 45° right of
    // up
    double chain = Math.toDegrees(Math.atan2(2 + Math.sqrt(2), -Math.sqrt(2)));
    assertThat(degrees(checks)).isCloseTo(chain - 45, within(1e-9));
  }

  @Test
  void whatCarriesNothingLiesStill() {
    Device idle = boom().loadCase(new LoadCase("idle", java.util.Map.of("cask", 0.0), 1)).build();
    Checks checks = checks(idle, Method.ALLOWABLE, seat("boom", Direction.LEFT));

    assertThat(degrees(checks)).isZero();
  }
}
