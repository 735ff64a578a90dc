package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Effect.Change;
import bellcrank.statics.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers that cannot be more, or less, than they are stated. */
class OneSidedEffectTest {

  /** A crate of 490 N on a floor; the pull that moves it is μ · G. */
  private static Device crate(double friction) {
    return Device.named("crate")
        .gravity(Vector.of(0, -9.8))
        .point("foot", 0, 0)
        .member("crate", "foot")
        .connect(
            new ContactBase(
                "floor", "foot", "crate", "ground", Direction.UP, 1, friction, friction))
        .weight("own weight", "crate", "foot", 50)
        .force("pull", "crate", "foot", Vector.of(100, 0))
        .build();
  }

  private static final Figure FAILURE = Figure.firstFailure(Variation.of("pull"));

  private static Sensitivities of(Device device, Input input) {
    return Sensitivities.of(Model.of(device), FAILURE, List.of(input));
  }

  @Test
  void frictionCannotBeLessThanNone() {
    Sensitivities effects = of(crate(0), Input.friction("floor"));
    Change.OneSided change = (Change.OneSided) effects.ranked().get(0).change();
    assertThat(change.above()).isTrue();
    assertThat(change.rate()).isCloseTo(4.9, within(1e-6));
    assertThat(effects.ranked().get(0).rate().orElseThrow()).isEqualTo(change.rate());
    assertThat(effects.words())
        .containsExactly(
            "0.01 more of friction of floor raises multiple of pull at the first failure by 0.0490"
                + " (found by differences); with less of it there is no answer.");
  }

  /** A number of one's own that must not be above what it is. */
  private static Input load(double most) {
    return Input.of(
        "load of the crate",
        Dimension.MASS,
        model -> most,
        (model, value) -> {
          if (value > most) {
            throw new ModelException("crate", "load", value, "at most " + most);
          }
          return Input.mass("own weight").put(model, 50 + value - most);
        });
  }

  @Test
  void aFullCrateCannotBeFuller() {
    Sensitivities effects = of(crate(0.4), load(30));
    Change.OneSided change = (Change.OneSided) effects.ranked().get(0).change();
    assertThat(change.above()).isFalse();
    assertThat(change.rate()).isCloseTo(0.4 * 9.8 / 100, within(1e-9));
    assertThat(effects.words())
        .containsExactly(
            "1 % less of load of the crate lowers multiple of pull at the first failure by 0.600 %"
                + " (0.0118) (found by differences); with more of it there is no answer.");
  }

  @Test
  void belowZeroMoreIsLess() {
    Sensitivities effects = of(crate(0.4), load(-30));
    assertThat(effects.words().get(0))
        .startsWith("1 % more of load of the crate lowers")
        .endsWith("; with less of it there is no answer.");
  }
}
