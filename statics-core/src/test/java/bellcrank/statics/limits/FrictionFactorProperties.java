package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The least factor on friction against verdicts at factors beside it. */
class FrictionFactorProperties {

  /** Beside a factor at which a device locks itself, verdicts are still told this near. */
  private static final double BESIDE = 1e-3;

  /** Below it there is no state at all. */
  private static final double BELOW = 1e-6;

  /** Coefficients far above 1 make nearly parallel conditions of friction. */
  private static final double BELOW_LARGE = 1e-2;

  private static final double LARGE = 5;

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void aboveItTheDeviceHoldsAndBelowItDoesNot(@ForAll("any") Device device) {
    FrictionFactor factor = Limits.of(device).frictionFactor();
    if (factor instanceof FrictionFactor.Least least) {
      assertThat(holds(device, least.factor() * (1 + BESIDE))).isTrue();
      double below = least.factor() < LARGE ? BELOW : BELOW_LARGE;
      assertThat(holds(device, least.factor() * (1 - below))).isFalse();
    } else if (factor instanceof FrictionFactor.AnyIsEnough) {
      assertThat(holds(device, BESIDE)).isTrue();
    } else if (factor instanceof FrictionFactor.NotNeeded) {
      assertThat(holds(device, 0)).isTrue();
    } else if (factor instanceof FrictionFactor.NotEnough) {
      assertThat(holds(device, 1 / BESIDE)).isFalse();
    }
  }

  private static boolean holds(Device device, double factor) {
    Verdict verdict = Limits.of(device).withFriction(factor).verdict();
    assertThat(verdict).isNotInstanceOf(Verdict.NotDecided.class);
    return !(verdict instanceof Verdict.DoesNotHold);
  }
}
