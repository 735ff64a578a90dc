package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The main properties on devices that are the same in every run, so that a change of the library is
 * judged the same way twice. The properties proper look for new devices each time.
 */
class FixedDevicesTest {

  private static final int DEVICES_OF_A_SEED = 12;

  private interface Check {
    void of(Device device);
  }

  private static void each(int seed, Check check) {
    int clear = 0;
    for (int i = 0; i < DEVICES_OF_A_SEED; i++) {
      Device device = RandomDevice.of(1000L * seed + i);
      if (PlainStatics.of(device).isClear()) {
        check.of(device);
        clear++;
      }
    }
    assertThat(clear).isGreaterThan(DEVICES_OF_A_SEED / 2);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void theSecondOpinionIsTheSame(int seed) {
    each(
        seed,
        device -> {
          for (LoadCase loadCase : device.cases()) {
            if (PlainStatics.of(device, loadCase, Pose.DRAWN).isClear()) {
              PlainStaticsProperties.compare(device, loadCase);
            }
          }
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void everyBodyIsInEquilibrium(int seed) {
    each(
        seed,
        device -> {
          Balance balance = Balance.of(device);
          if (!(balance.outcome() instanceof Outcome.NoBalance)) {
            for (String body : EquilibriumProperties.bodies(device)) {
              EquilibriumProperties.inEquilibrium(balance, Set.of(body));
            }
          }
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 6})
  void axesAndUnitsDoNotMatter(int seed) {
    Similarity other = new Similarity(true, 0.7, 3.28, Vector.of(-11, 4), 0.2248);
    each(seed, device -> InvarianceProperties.same(device, other));
  }
}
