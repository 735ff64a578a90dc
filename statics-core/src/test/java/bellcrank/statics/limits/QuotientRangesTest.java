package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.internal.FrictionLevel;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Quotients of two answers over all states: of what a range is told, and at what price. */
class QuotientRangesTest {

  /** Each round squares what is missing, so a few programs for each end are enough. */
  @Test
  void aQuotientIsFoundInAFewPrograms() {
    Device ladder = Yard.ladder(0.5, 0.2);
    Admissible admissible = new Admissible(ladder, LoadCase.ALL_LOADS, Pose.DRAWN, List.of());
    Balance balance = Balance.of(ladder);
    AtomicInteger programs = new AtomicInteger();
    AskRange finder =
        new AskRange(
            balance,
            new LinearAsks(balance, admissible.assembly(), admissible.scale()),
            goal -> {
              programs.incrementAndGet();
              return admissible.greatest(admissible.given(), FrictionLevel.STATED, goal).extreme();
            });

    assertThat(finder.of(Ask.parse("foot.normal per wall.x")).range()).isPresent();
    assertThat(programs).hasValueLessThan(20);
  }

  /** The size of N and T is not |N| + |T|, and a turned size is no size below zero. */
  @Test
  void aQuotientOfSizesHasNoRange() {
    Limits limits = Limits.of(Yard.ladder(0.5, 0.2));

    for (String ask :
        List.of(
            "greatest foot.size per foot.normal",
            "least foot.size per foot.normal",
            "greatest foot.normal per wall.size")) {
      assertThat(limits.answer(ask))
          .isInstanceOfSatisfying(
              Answer.Unanswered.class,
              none -> {
                assertThat(none.reason()).isEqualTo(Answer.Reason.NOT_DEFINED);
                assertThat(none.explanation()).startsWith("a quotient has a range only of what");
              });
    }
    assertThat(limits.answer("greatest foot.size")).isInstanceOf(Answer.Value.class);
  }
}
