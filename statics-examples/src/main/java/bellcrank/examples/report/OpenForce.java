package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A force that equilibrium alone leaves open.
 *
 * @param ask its name
 * @param range between which values it lies
 * @param withLeastForces its value in the state with the least pushes and tensions, which is an
 *     assumption
 */
record OpenForce(Ask ask, Range range, Optional<Answer.Value> withLeastForces) {

  /** Those of a device that holds; sought quantities are told elsewhere. */
  static List<OpenForce> of(Limits limits, Balance balance, Optional<Balance> least) {
    List<OpenForce> forces = new ArrayList<>();
    List<Ask> open =
        balance.outcome() instanceof Outcome.NotDecided
            ? balance.components()
            : balance.undetermined();
    for (Ask ask : open) {
      if (!isSought(ask, balance)) {
        limits.range(ask).ifPresent(range -> forces.add(of(ask, range, least)));
      }
    }
    return List.copyOf(forces);
  }

  private static OpenForce of(Ask ask, Range range, Optional<Balance> least) {
    Optional<Answer.Value> value =
        least
            .map(state -> state.answer(ask))
            .filter(Answer.Value.class::isInstance)
            .map(Answer.Value.class::cast);
    return new OpenForce(ask, range, value);
  }

  private static boolean isSought(Ask ask, Balance balance) {
    return ask.subject() instanceof Subject.Part part
        && balance.device().load(part.name()).filter(Sought.class::isInstance).isPresent();
  }
}
