package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The first few of many devices; a profile of the build goes through a million. */
class ManyDevicesTest {

  private static final int DEVICES = 3000;
  private static final int MOST_STEPS = 6;

  @Test
  void bothOpinionsAreTheSame() {
    ManyDevices many = ManyDevices.of(1, DEVICES, MOST_STEPS);
    assertThat(many.differences()).isEmpty();
    // all kinds must have been met, else the devices are too plain
    assertThat(many.compared()).isGreaterThan(DEVICES * 9 / 10);
    assertThat(many.balanced()).isBetween(DEVICES / 2, many.compared() - DEVICES / 50);
    assertThat(many.held()).isBetween(DEVICES / 4, many.compared() - DEVICES / 10);
    assertThat(many.redundant()).isGreaterThan(DEVICES / 20);
  }
}
