package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.arm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.geometry.Direction;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Changes of length against hand values. */
class ElongationTest {

  private static BarForces bar(Device device) {
    return Balance.of(device).internalForces("arm").bars().get(0);
  }

  /** F·L/(E·A) = 2000·1000/(210000·800) = 0.011905 mm. */
  @Test
  void underOneForce() {
    assertThat(Elongation.of(bar(arm().build()), new Sized(BAR, STEEL), 1))
        .isCloseTo(1.19048e-5, within(1e-10));
    assertThat(Elongation.of(2000, 1, BAR.area(), 210e9)).isCloseTo(1.19048e-5, within(1e-10));
    assertThat(Elongation.of(bar(arm().build()), new Sized(BAR, STEEL), 2))
        .isCloseTo(1.19048e-5 / 2, within(1e-10));
  }

  /**
   * A load along the arm that grows from 0 at 0.4 m to 600 N/m at the tip: it adds w·l/2 = 180 N at
   * 0.4 m. ∫N ds = 2000·1 + 180·0.4 + 180·0.6·2/3 = 2144 N·m.
   */
  @Test
  void underASpreadLoadInTwoPieces() {
    Device device =
        arm()
            .point("middle", 0.4, 0)
            .load(
                new SpreadLoad(
                    "drag",
                    "arm",
                    "middle",
                    "tip",
                    0,
                    600,
                    Optional.of(Direction.RIGHT),
                    SpreadLoad.Per.LENGTH))
            .build();
    assertThat(Elongation.of(bar(device), new Sized(BAR, STEEL), 1) * 210e9 * BAR.area())
        .isCloseTo(2144, within(1e-6));
  }

  @Test
  void mistakes() {
    refused(() -> Elongation.of(1, -1, 1, 1), "elongation: length is -1.0; wanted: 0 or more");
    refused(() -> Elongation.of(1, 1, 0, 1), "elongation: area is 0.0; wanted: a number above 0");
    refused(
        () -> Elongation.of(1, 1, 1, 0),
        "elongation: modulus of elasticity is 0.0; wanted: a number above 0");
    refused(
        () -> Elongation.of(bar(arm().build()), new Sized(BAR, STEEL), 0),
        "elongation: count is 0; wanted: a whole number of 1 or more");
    refused(
        () -> Elongation.ofShear(1, 1, 1, -2),
        "shear movement: shear modulus is -2.0; wanted: a number above 0");
    refused(
        () -> Elongation.ofShear(1, -1, 1, 1), "shear movement: length is -1.0; wanted: 0 or more");
    refused(
        () -> Elongation.ofShear(1, 1, 0, 1),
        "shear movement: area is 0.0; wanted: a number above 0");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable made, String message) {
    assertThatThrownBy(made).isInstanceOf(ModelException.class).hasMessage(message);
  }
}
