package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import org.junit.jupiter.api.Test;

/** The multiple at which something gives, with and without strengths. */
class FirstFailureTest {

  private static final Sizing STAY =
      Sizing.of(Method.ALLOWABLE).with(Rating.of("stay", 5000, "tag"));

  /** The stay pulls 600 · 2.5 / 1.5 = 1000 N; a chest beside it bears a push of 40 N. */
  private static Device jib(double push) {
    return StudyYard.jib().toBuilder()
        .gravity(Vector.of(0, -10))
        .point("toe", 5, 0)
        .member("chest", "toe")
        .connect(new ContactBase("floor", "toe", "chest", "ground", Direction.UP, 1, 0.4, 0.4))
        .weight("chest weight", "chest", "toe", 10)
        .force("push", "chest", "toe", Vector.of(push, 0))
        .build();
  }

  @Test
  void aCheckMayBeTheFirst() {
    Figure failure = Figure.firstFailure(Variation.of("barrel"));
    assertThat(failure.of(Model.of(jib(30)).with(STAY)).number().orElseThrow())
        .isCloseTo(5, within(1e-9));
  }

  /** With or without strengths: what does not hold whatever the load has no first failure. */
  @Test
  void whatHoldsAtNoMultipleHasNone() {
    Figure failure = Figure.firstFailure(Variation.of("barrel"));
    FigureAnswer.None plain = (FigureAnswer.None) failure.of(Model.of(jib(50)));
    assertThat(plain.reason()).isEqualTo(FigureAnswer.Reason.NO_BALANCE);
    assertThat(failure.of(Model.of(jib(50)).with(STAY))).isEqualTo(plain);
  }

  /** A push that is too much already gives way at no more than nothing of the other. */
  @Test
  void whatDoesNotHoldWithoutTheLoadsFailsAtNothing() {
    Device pulled =
        jib(50).toBuilder().force("pull", "chest", "toe", Vector.of(20, 0)).build();
    Figure failure = Figure.firstFailure(Variation.of("pull"));
    assertThat(failure.of(Model.of(pulled))).isEqualTo(failure.of(Model.of(pulled).with(STAY)));
    assertThat(failure.of(Model.of(pulled)).number().orElseThrow()).isZero();
  }
}
