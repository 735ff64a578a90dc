package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SampleDevicesTest {

  private static double value(Device device, Ask ask) {
    return ((Answer.Value) Balance.of(device).answer(ask)).si();
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void samplesAreInBalanceWithoutBrokenConditions(Sample sample) {
    Balance balance = Balance.of(sample.device());

    assertThat(balance.outcome().words()).isEqualTo("in balance");
    assertThat(balance.redundancy()).isZero();
    assertThat(balance.violations()).isEmpty();
  }

  @Test
  void derrickSolvesInSmallBlocks() {
    Prepared prepared = Prepared.of(SampleDevices.derrick());

    assertThat(prepared.isDeterminate()).isTrue();
    assertThat(prepared.largestBlock()).isBetween(1, 3);
  }

  @Test
  void roofRingIsOneBlockOfNine() {
    Prepared prepared = Prepared.of(SampleDevices.roofRing());

    assertThat(prepared.isDeterminate()).isTrue();
    assertThat(prepared.largestBlock()).isEqualTo(9);
  }

  @Test
  void crankTurnsTheDrumAgainstTheRope() {
    Device derrick = SampleDevices.derrick();

    // moments on the winch about its axle: drum radius 0.06 m, crank 0.35 m
    double rope = value(derrick, Ask.of("luffing rope", Measure.TENSION));
    assertThat(value(derrick, Ask.of("hand", Measure.VALUE)))
        .isCloseTo(rope * 0.06 / 0.35, within(1e-9));
  }

  @Test
  void pressLeverMultipliesTheHand() {
    // moments about the hinge, by hand: (220 × 1.6 + 6 × 9.80665 × 0.8) / 0.25
    assertThat(value(SampleDevices.pressLever(), Ask.of("ram force", Measure.VALUE)))
        .isCloseTo((220 * 1.6 + 6 * 9.80665 * 0.8) / 0.25, within(1e-9));
  }

  @Test
  void toggleMultipliesTheHand() {
    // both links pushed by the same horizontal force H: H × (0.04/0.3 + 0.04/0.32) = 180
    assertThat(value(SampleDevices.toggle(), Ask.of("clamping", Measure.VALUE)))
        .isCloseTo(180 / (0.04 / 0.3 + 0.04 / 0.32), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 5, 7, 101, 1003})
  void simpleTrussHasTheBarsAskedForAndStands(int bars) {
    Device truss = SampleDevices.simpleTruss(bars);
    Balance balance = Balance.of(truss);

    assertThat(truss.connections().stream().filter(Strut.class::isInstance).count())
        .isEqualTo(bars);
    assertThat(balance.outcome().words()).isEqualTo("in balance");
    assertThat(balance.residual()).isLessThan(1e-12);
  }

  @Test
  void supportsOfTheTrussShareItsLoads() {
    Device truss = SampleDevices.simpleTruss(101);

    // 52 joints from x = 0 to 25.5 m, 26 loads of 10 N on the odd ones; the roller is at x = 25 m
    double sum = 0;
    double moment = 0;
    for (int joint = 1; joint < 52; joint += 2) {
      sum += 10;
      moment += 10 * 0.5 * joint;
    }
    double right = moment / 25;
    assertThat(value(truss, Ask.of("right support", Measure.NORMAL)))
        .isCloseTo(right, within(1e-9));
    assertThat(value(truss, Ask.of("left support", Measure.Y)))
        .isCloseTo(sum - right, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 100, 1000})
  void scissorChainHasTheMembersAskedForAndStands(int members) {
    Device chain = SampleDevices.scissorChain(members);
    Balance balance = Balance.of(chain);

    assertThat(chain.members()).hasSize(members);
    assertThat(balance.outcome().words()).isEqualTo("in balance");
    assertThat(balance.redundancy()).isZero();
    assertThat(balance.residual()).isLessThan(1e-12);
  }

  @Test
  void feetOfTheScissorChainCarryItsLoads() {
    Device chain = SampleDevices.scissorChain(100);

    assertThat(value(chain, Ask.of("left0", Measure.Y))).isCloseTo(120, within(1e-6));
    assertThat(value(chain, Ask.of("right0", Measure.Y))).isCloseTo(80, within(1e-6));
  }

  @Test
  void sizesThatDoNotFitAreRefused() {
    assertThatThrownBy(() -> SampleDevices.simpleTruss(4)).hasMessageContaining("odd");
    assertThatThrownBy(() -> SampleDevices.simpleTruss(1)).hasMessageContaining("at least 3");
    assertThatThrownBy(() -> SampleDevices.scissorChain(3)).hasMessageContaining("even");
    assertThatThrownBy(() -> SampleDevices.scissorChain(0)).hasMessageContaining("at least 2");
  }
}
