package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A beam on a pin and a roller whose line passes the pin at a small distance. */
class NearCriticalShapeTest {

  private static final double LENGTH = 2;

  private static Device beam(double distance) {
    double angle = Math.asin(distance / LENGTH);
    return Device.named("nearly critical beam")
        .point("pin", 0, 0)
        .point("roller", LENGTH, 0)
        .point("load", 1, 0)
        .member("beam", "pin", "load", "roller")
        .pin("pin", "pin", "beam", "ground")
        .roller("roller", "roller", "beam", "ground", Direction.ofAngle(angle))
        .force("load", "beam", "load", Vector.of(0, -10))
        .build();
  }

  @Test
  void theRollersForceIsTheMomentOverItsDistance() {
    Balance balance = Balance.of(beam(1e-8));

    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(balance.number("roller").orElseThrow()).isCloseTo(10 * 1 / 1e-8, within(1e4));
  }

  /**
   * Moved by a thousandth of the size, the line passes at 2 mm: hardly any of the force is left.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-8, -1e-8, 2e-8})
  void theGuiltyPointAndTheChangeAreTold(double distance) {
    NearCritical found = Balance.of(beam(distance)).nearCritical().orElseThrow();

    assertThat(found.point()).isIn("pin", "roller");
    assertThat(found.move()).isCloseTo(1e-3 * LENGTH, within(1e-15));
    assertThat(found.change()).isCloseTo(1, within(2e-3));
  }

  @Test
  void anOrdinaryShapeIsNotWarnedOf() {
    assertThat(Balance.of(beam(0.5)).nearCritical()).isEmpty();
    assertThat(Balance.of(beam(1e-3)).nearCritical()).isEmpty();
  }

  @Test
  void withoutBalanceThereIsNoWarning() {
    Device critical = beam(0);

    assertThat(Balance.of(critical).outcome()).isInstanceOf(Outcome.NoBalance.class);
    assertThat(Balance.of(critical).nearCritical()).isEmpty();
  }

  @Test
  void withoutLoadsNothingChanges() {
    Device beam = beam(1e-8);
    Device unloaded =
        Device.named("unloaded")
            .point("pin", 0, 0)
            .point("roller", LENGTH, 0)
            .member("beam", "pin", "roller")
            .pin("pin", "pin", "beam", "ground")
            .connect(beam.connections().get(1))
            .build();

    assertThat(Balance.of(unloaded).nearCritical().orElseThrow().change()).isZero();
  }
}
