package bellcrank.statics.drawing;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.util.OptionalDouble;

/** Reads numbers of a balance; empty where there is none. */
record Known(Balance balance) {

  OptionalDouble value(String part, Measure measure) {
    return value(Ask.of(part, measure));
  }

  OptionalDouble value(String part, Measure measure, String body) {
    return value(Ask.of(part, measure).onBody(body));
  }

  private OptionalDouble value(Ask ask) {
    return balance.answer(ask) instanceof Answer.Value value
        ? OptionalDouble.of(value.si())
        : OptionalDouble.empty();
  }
}
