package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is told in answer to an ask.
 *
 * @param setup the device that is asked, in the case of the ask
 * @param ask what is asked
 * @param answer the one answer, or why there is none
 * @param range between which values it lies; one value twice for a plain answer
 * @param states whether all states of the device count
 */
record Told(Setup setup, Ask ask, Answer answer, Optional<Range> range, boolean states) {

  /** The one answer that statics gives. */
  static Told one(Setup setup, String text) {
    Ask ask = setup.ask(text);
    Setup of = setup.forCase(ask);
    Answer answer = of.answer(ask);
    return new Told(of, ask, answer, range(answer), false);
  }

  /** The answers in all states in which the device can rest. */
  static Told inAllStates(Setup setup, String text) {
    Ask ask = setup.ask(text);
    Setup of = setup.forCase(ask);
    boolean several = of.isDecidedByLimits() && !Limits.decide(ask);
    Answer answer = of.answer(ask);
    return new Told(of, ask, answer, several ? of.range(ask) : range(answer), several);
  }

  private static Optional<Range> range(Answer answer) {
    return answer instanceof Answer.Value value
        ? Optional.of(
            new Range(
                value.dimension(), OptionalDouble.of(value.si()), OptionalDouble.of(value.si()), 0))
        : Optional.empty();
  }
}
