package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import org.junit.jupiter.api.Test;

/** Forces inside members over all states in which a device can hold. */
class InsideLimitsTest {

  private static final double CLOSE = 1e-6;

  /**
   * With wall friction f up, moments about the foot give 630 = 4 T + 3 f; the ladder leans as 3 :
   * 4. Below the rung V = 0.6 (900 − f) − 0.8 T = 414 whatever f is, and N = −0.8 (900 − f) − 0.6
   * T.
   */
  @Test
  void aLadderIsBentTheSameInAllStatesButNotPressedTheSame() {
    Limits limits = Limits.of(Yard.ladder(0.5, 0.3));
    Range friction = limits.range("wall.friction").orElseThrow();
    Range normal = limits.range("ladder.normal at 0.5 m of foot–rung").orElseThrow();
    // friction of the wall on a push to the left counts upwards
    double least = -814.5 + 1.25 * friction.least().orElseThrow();
    double greatest = -814.5 + 1.25 * friction.greatest().orElseThrow();
    assertThat(greatest - least).isGreaterThan(10);
    assertThat(normal.least().orElseThrow()).isCloseTo(least, within(CLOSE));
    assertThat(normal.greatest().orElseThrow()).isCloseTo(greatest, within(CLOSE));
    Range moment = limits.range("ladder.moment at 0.5 m of foot–rung").orElseThrow();
    assertThat(moment.least().orElseThrow()).isCloseTo(207, within(CLOSE));
    assertThat(moment.greatest().orElseThrow()).isCloseTo(207, within(CLOSE));
    assertThat(limits.answer("greatest ladder.normal at 0.5 m of foot–rung"))
        .isInstanceOfSatisfying(
            Answer.Value.class, value -> assertThat(value.si()).isCloseTo(greatest, within(CLOSE)));
  }

  @Test
  void aPeakHasNoRange() {
    Device ladder = Yard.ladder(0.5, 0.3);
    assertThat(Limits.of(ladder).answer("greatest ladder.peak normal"))
        .isInstanceOfSatisfying(
            Answer.Unanswered.class,
            none -> assertThat(none.explanation()).contains("its range is told at a place"));
  }
}
