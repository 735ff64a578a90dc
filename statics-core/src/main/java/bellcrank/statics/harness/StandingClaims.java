package bellcrank.statics.harness;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Verdict;
import java.util.List;
import java.util.Optional;

/** Holds how a device stands against what is expected. */
record StandingClaims(Setup setup) {

  /** What is wrong with saying that it is held, whatever of its states it is in. */
  Optional<Message> held() {
    if (setup.isDecidedByLimits()) {
      Verdict verdict = setup.limits().verdict();
      return verdict instanceof Verdict.Holds
          ? Optional.empty()
          : Optional.of(told("be held", verdict));
    }
    Balance balance = setup.balance();
    return balance.outcome() instanceof Outcome.InBalance
        ? Optional.empty()
        : Optional.of(told("be held", balance));
  }

  /** What is wrong with saying that there is a state in which it rests. */
  Optional<Message> canRest() {
    if (setup.isDecidedByLimits()) {
      Verdict verdict = setup.limits().verdict();
      boolean none =
          verdict instanceof Verdict.DoesNotHold || verdict instanceof Verdict.NotDecided;
      return none ? Optional.of(told("be able to rest", verdict)) : Optional.empty();
    }
    Balance balance = setup.balance();
    boolean rests =
        balance.outcome() instanceof Outcome.InBalance
            || balance.outcome() instanceof Outcome.InBalanceForTheseLoads;
    return rests ? Optional.empty() : Optional.of(told("be able to rest", balance));
  }

  /** What is wrong with saying that it does not rest at all. */
  Optional<Message> givesWay() {
    if (setup.isDecidedByLimits()) {
      Verdict verdict = setup.limits().verdict();
      return verdict instanceof Verdict.DoesNotHold
          ? Optional.empty()
          : Optional.of(told("give way", verdict));
    }
    Balance balance = setup.balance();
    boolean gives =
        balance.outcome() instanceof Outcome.NoBalance
            || balance.outcome() instanceof Outcome.ConditionsBroken;
    return gives ? Optional.empty() : Optional.of(told("give way", balance));
  }

  /** How it stands, in a clause. */
  String words() {
    StandingWords words = StandingWords.of(setup.shown());
    return setup.isDecidedByLimits()
        ? words.of(setup.limits().verdict())
        : words.of(setup.balance().outcome(), setup.balance().freedoms());
  }

  private Message told(String expected, Verdict verdict) {
    return message(expected, StandingWords.of(setup.shown()).of(verdict), concerned(verdict));
  }

  private Message told(String expected, Balance balance) {
    String words = StandingWords.of(setup.shown()).of(balance.outcome(), balance.freedoms());
    return message(expected, words, concerned(balance.outcome()));
  }

  private Message message(String expected, String but, List<String> bodies) {
    return Message.of(setup.name() + " is expected to " + expected + ", but " + but + ".")
        .with(setup.shown(), bodies);
  }

  /** The body at the first part that gives way. */
  private List<String> concerned(Verdict verdict) {
    if (verdict instanceof Verdict.Impending impending) {
      return concerned(impending.how());
    }
    if (verdict instanceof Verdict.DoesNotHold failing) {
      return concerned(failing.how());
    }
    return verdict instanceof Verdict.HoldsOnceSeated seated
        ? bodies().ofPart(seated.parts().get(0))
        : List.of();
  }

  private List<String> concerned(GivingWay how) {
    return how.events().isEmpty() ? List.of() : bodies().ofPart(how.events().get(0).part());
  }

  private List<String> concerned(Outcome outcome) {
    return outcome instanceof Outcome.ConditionsBroken broken
        ? bodies().ofPart(broken.violations().get(0).part())
        : List.of();
  }

  private ConcernedBodies bodies() {
    return new ConcernedBodies(setup.device());
  }
}
