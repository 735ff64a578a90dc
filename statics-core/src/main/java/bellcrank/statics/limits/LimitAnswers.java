package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;
import java.util.OptionalDouble;

/** Answers asks. */
final class LimitAnswers {

  private final Limits limits;
  private final Balance balance;

  LimitAnswers(Limits limits, Balance balance) {
    this.limits = limits;
    this.balance = balance;
  }

  /** The answer; the ask has been checked against the device. */
  Answer answer(Ask ask) {
    if (ask.subject() instanceof Subject.Extreme extreme) {
      Ask of = extreme.of();
      if (of.subject() instanceof Subject.Multiple multiple) {
        return end(new Variation.Multiple(multiple.loads()), extreme.greatest());
      }
      if (of.subject() instanceof Subject.Place place) {
        Stretch line = of.stretch().orElseThrow();
        Variation variation = Variation.place(place.load(), line.start(), line.end());
        return end(variation, extreme.greatest());
      }
      return end(of, extreme.greatest());
    }
    if (ask.measure() == Measure.VERDICT) {
      return new Answer.Words(limits.verdict().words());
    }
    return switch (ask.measure()) {
      case EFFICIENCY -> limits.efficiency().orElseThrow().forward();
      case RETURN_EFFICIENCY -> limits.efficiency().orElseThrow().back();
      case FRICTION_FACTOR -> frictionFactor();
      default -> plain(ask);
    };
  }

  private Answer frictionFactor() {
    FrictionFactor factor = limits.frictionFactor();
    if (factor instanceof FrictionFactor.Least least) {
      return new Answer.Value(least.factor(), Dimension.NUMBER);
    }
    if (factor instanceof FrictionFactor.NotNeeded
        || factor instanceof FrictionFactor.AnyIsEnough) {
      return new Answer.Value(0, Dimension.NUMBER);
    }
    if (factor instanceof FrictionFactor.NotDecided open) {
      return new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why());
    }
    return factor instanceof FrictionFactor.NoFriction
        ? new Answer.Unanswered(Answer.Reason.NOT_DEFINED, "no part of the device is rough")
        : new Answer.Unanswered(
            Answer.Reason.NO_BALANCE, "however rough its parts, the device does not hold");
  }

  /** What statics alone leaves open may be fixed by what the parts can give. */
  private Answer plain(Ask ask) {
    Answer answer = balance.answer(ask);
    boolean open =
        answer instanceof Answer.Unanswered none
            && (none.reason() == Answer.Reason.UNDETERMINED
                || none.reason() == Answer.Reason.NOT_DECIDED);
    if (!open) {
      return answer;
    }
    AskRange.Outcome outcome = limits.ranged(ask);
    Range range = outcome.range().orElse(null);
    if (range == null) {
      return outcome.answer();
    }
    return range.isOne()
        ? new Answer.Value(range.least().orElseThrow(), range.dimension())
        : answer;
  }

  private Answer end(Ask ask, boolean greatest) {
    AskRange.Outcome outcome = limits.ranged(ask);
    Range range = outcome.range().orElse(null);
    if (range == null) {
      return outcome.answer();
    }
    OptionalDouble end = greatest ? range.greatest() : range.least();
    return end.isPresent()
        ? new Answer.Value(end.getAsDouble(), range.dimension())
        : unlimited("unlimited");
  }

  private Answer end(Variation variation, boolean greatest) {
    Limit limit = limits.limit(variation);
    if (limit instanceof Limit.Never) {
      return new Answer.Unanswered(
          Answer.Reason.NO_BALANCE, "the device holds at no value of what is varied");
    }
    if (limit instanceof Limit.NotDecided open) {
      return new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why());
    }
    Limit.Between between = (Limit.Between) limit;
    Limit.End end = greatest ? between.greatest() : between.least();
    Dimension dimension =
        variation instanceof Variation.Place ? Dimension.LENGTH : Dimension.NUMBER;
    if (end instanceof Limit.End.At at) {
      return new Answer.Value(at.value(), dimension);
    }
    if (end instanceof Limit.End.EndOfLine line) {
      return new Answer.Value(line.value(), dimension);
    }
    if (end instanceof Limit.End.Open open) {
      return new Answer.Unanswered(Answer.Reason.NOT_DECIDED, open.why());
    }
    return unlimited(
        end instanceof Limit.End.SelfLocking ? "the device locks itself" : "unlimited");
  }

  private static Answer unlimited(String why) {
    return new Answer.Unanswered(Answer.Reason.UNLIMITED, "there is no such limit: " + why);
  }
}
