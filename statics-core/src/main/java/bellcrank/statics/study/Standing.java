package bellcrank.statics.study;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Problem;
import bellcrank.statics.device.Screw;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Verdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One of many models of a study: several figures of it and how it stands, from one balance where
 * that is enough. It answers what {@link Figure#of} and {@link Limits#verdict} would, only sooner.
 */
final class Standing {

  private final Model model;
  private final Device device;
  private final Map<LoadCase, Balance> balances = new HashMap<>(2);

  /**
   * How a model stands.
   *
   * @param words the verdict
   * @param kind which of three kinds it is
   * @param events what gives way
   */
  record State(String words, Kind kind, List<Event> events) {}

  /** Whether it stands. */
  enum Kind {
    HOLDS,
    GIVES_WAY,
    OPEN
  }

  private static final State HOLDS = new State(new Verdict.Holds().words(), Kind.HOLDS, List.of());

  Standing(Model model) {
    this.model = model;
    device = model.device();
  }

  /** Why nothing can be built, without the numbers, so that like reasons are counted together. */
  static String notBuilt(ModelException wrong) {
    Problem first = wrong.problems().get(0);
    return "cannot be built: " + first.field() + " of " + first.part();
  }

  FigureAnswer answer(Figure figure) {
    if (figure instanceof Figure.OfAsk one
        && model.foundations().isEmpty()
        && !Limits.decide(one.ask())) {
      Answer answer = balance(figure.loadCase(device)).answer(one.ask());
      boolean open =
          answer instanceof Answer.Unanswered none
              && (none.reason() == Answer.Reason.UNDETERMINED
                  || none.reason() == Answer.Reason.NOT_DECIDED);
      if (!open) {
        return FigureFinder.read(device, one.ask(), answer);
      }
    }
    return figure.of(model);
  }

  private Balance balance(LoadCase loadCase) {
    return balances.computeIfAbsent(loadCase, one -> Balance.of(device, one, Pose.DRAWN));
  }

  /** How it stands under the case of a figure. */
  State state(Figure figure) {
    return state(figure.loadCase(device));
  }

  /** How it stands under a case. */
  State state(LoadCase loadCase) {
    boolean rough = Limits.concern(device) || !model.foundations().isEmpty();
    Outcome outcome = balance(loadCase).outcome();
    if (!rough) {
      return outcome instanceof Outcome.NoBalance
          ? new State(outcome.words(), Kind.GIVES_WAY, List.of())
          : HOLDS;
    }
    // forces that have no choice and that all parts can give are a state, and the only one
    boolean alone =
        outcome instanceof Outcome.InBalance
            && balance(loadCase).redundancy() == 0
            && model.foundations().isEmpty()
            && device.connections().stream().noneMatch(Standing::hasLawsOfItsOwn);
    return alone ? HOLDS : judged(loadCase);
  }

  /** Parts whose friction a balance does not look at. */
  private static boolean hasLawsOfItsOwn(Connection connection) {
    return connection instanceof Screw || (connection instanceof Pin pin && pin.friction() > 0);
  }

  private State judged(LoadCase loadCase) {
    Verdict verdict = Limits.of(device, loadCase, Pose.DRAWN, model.foundations()).verdict();
    if (verdict instanceof Verdict.DoesNotHold not) {
      boolean mechanism = not.after() == Verdict.After.MECHANISM;
      return new State(mechanism ? "no balance" : not.words(), Kind.GIVES_WAY, not.how().events());
    }
    return new State(
        verdict.words(), verdict instanceof Verdict.NotDecided ? Kind.OPEN : Kind.HOLDS, List.of());
  }
}
