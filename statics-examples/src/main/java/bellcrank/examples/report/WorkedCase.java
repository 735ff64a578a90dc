package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the answers for one case are worked out by hand.
 *
 * @param solution for the case as it stands; empty if only ends of ranges were asked for
 * @param ends for the greatest and least values of sought efforts, by their asks
 */
record WorkedCase(Optional<WorkedSolution> solution, Map<Ask, WorkedSolution> ends) {

  /** The solutions for those asks that belong to the case; for everything if none was asked. */
  static WorkedCase of(CaseAnswer one, List<Ask> asks) {
    Optional<Limits> limits = one.solution().limits();
    if (asks.isEmpty()) {
      Map<Ask, WorkedSolution> ends = new LinkedHashMap<>();
      limits.ifPresent(known -> known.device().sought().forEach(end -> ends(known, end, ends)));
      WorkedSolution all =
          limits.map(WorkedSolution::of).orElseGet(() -> WorkedSolution.of(one.balance()));
      return new WorkedCase(Optional.of(all), ends);
    }
    List<Ask> own = new ArrayList<>();
    Map<Ask, WorkedSolution> ends = new LinkedHashMap<>();
    for (Ask ask : asks) {
      if (ask.loadCase().map(one.balance().loadCase().name()::equals).orElse(true)) {
        Optional<WorkedSolution> end = limits.flatMap(known -> end(known, ask));
        if (end.isPresent()) {
          ends.put(ask, end.get());
        } else {
          own.add(ask);
        }
      }
    }
    Optional<WorkedSolution> solution =
        own.isEmpty() && !ends.isEmpty()
            ? Optional.empty()
            : Optional.of(
                limits
                    .map(known -> WorkedSolution.of(known, own))
                    .orElseGet(() -> WorkedSolution.of(one.balance(), own)));
    return new WorkedCase(solution, ends);
  }

  /** Both ends of an effort that has a range. */
  private static void ends(Limits limits, Sought sought, Map<Ask, WorkedSolution> ends) {
    Ask ask = Ask.of(sought.name());
    if (sought.want() != Sought.Want.COMPONENTS
        && !limits.range(ask).map(Range::isOne).orElse(true)) {
      for (Ask end : List.of(ask.greatest(), ask.least())) {
        end(limits, end).ifPresent(solution -> ends.put(end, solution));
      }
    }
  }

  /** The solution for an end of the range of a sought effort; empty for other asks. */
  private static Optional<WorkedSolution> end(Limits limits, Ask ask) {
    if (!(ask.subject() instanceof Subject.Extreme extreme)
        || !(extreme.of().subject() instanceof Subject.Part part)
        || !extreme.of().equals(Ask.of(part.name()))) {
      return Optional.empty();
    }
    boolean isEffort =
        limits.device().load(part.name()).orElse(null) instanceof Sought effort
            && effort.want() != Sought.Want.COMPONENTS;
    return isEffort
        ? WorkedSolution.atLimit(limits, part.name(), extreme.greatest(), List.of())
        : Optional.empty();
  }
}
