package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.LimitState;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes solutions in which the limits of parts matter. */
final class LimitWriting {

  private LimitWriting() {}

  /** A device as it stands, and whether it does; with nothing to spare its laws are equations. */
  static WorkedSolution decided(Limits limits, Optional<List<Ask>> asks) {
    Balance plain = limits.balance();
    Verdict verdict = limits.verdict();
    Decision decision = new Decision(limits, plain.pose(), verdict);
    Optional<LimitState> state =
        plain.redundancy() > 0 ? justHeld(limits, verdict, decision) : Optional.empty();
    Balance balance = state.map(LimitState::balance).orElse(plain);
    Optional<List<Ask>> told =
        asks.map(all -> all.stream().filter(ask -> !Limits.decide(ask)).toList());
    WorkedSolution solution =
        new SolutionWriting(balance, told, state, Optional.of(decision)).write();
    List<Step> steps = new ArrayList<>();
    state.map(one -> new Step.JustHeld(one.friction(), one.how())).ifPresent(steps::add);
    steps.addAll(solution.steps());
    asks.stream()
        .flatMap(List::stream)
        .filter(Limits::decide)
        .forEach(ask -> steps.add(new Step.Result(ask, limits.answer(ask), List.of())));
    return solution.withSteps(steps);
  }

  /**
   * The state in which a device just holds whose forces statics leaves open: the only one, with as
   * much friction as that takes.
   */
  private static Optional<LimitState> justHeld(Limits limits, Verdict verdict, Decision decision) {
    if (verdict instanceof Verdict.Impending impending) {
      return limits.withLeastForces().map(forces -> new LimitState(forces, impending.how(), 1));
    }
    if (verdict instanceof Verdict.DoesNotHold
        && decision.judged().friction() instanceof FrictionFactor.Least least) {
      return limits
          .withFriction(least.factor())
          .withLeastForces()
          .map(forces -> new LimitState(forces, least.how(), least.factor()));
    }
    return Optional.empty();
  }

  static Optional<WorkedSolution> atLimit(
      Limits limits, String sought, boolean greatest, List<Ask> more) {
    Ask value = Ask.of(sought);
    List<Ask> asks = new ArrayList<>(List.of(value));
    asks.addAll(more);
    return limits
        .stateAt(sought, greatest)
        .map(
            state -> {
              WorkedSolution solution =
                  new SolutionWriting(
                          state.balance(), Optional.of(asks), Optional.of(state), Optional.empty())
                      .write();
              List<Step> steps = new ArrayList<>();
              steps.add(new Step.AtLimit(sought, greatest, state.how()));
              Ask end = greatest ? value.greatest() : value.least();
              for (Step step : solution.steps()) {
                steps.add(
                    step instanceof Step.Result result && result.ask().equals(value)
                        ? new Step.Result(end, result.answer(), result.from())
                        : step);
              }
              return solution.withSteps(steps);
            });
  }
}
