package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Reads an answer that is linear in the forces as multiples of them: it is asked of a balance in
 * which one force after the other is one unit. So there is one reading of every ask.
 */
final class LinearAsks {

  /**
   * An answer as a sum of multiples of forces.
   *
   * @param goal the multiples, of forces in N and of couples divided by the size
   * @param constant what is added
   * @param dimension what kind of quantity it is
   * @param refusal why there is none; then the rest means nothing
   */
  record Form(Goal goal, double constant, Dimension dimension, Optional<Answer> refusal) {
    double at(double[] forces) {
      return goal.at(forces) + constant;
    }
  }

  private final Balance balance;
  private final Assembly assembly;
  private final double scale;

  /**
   * A reader.
   *
   * @param scale the unit that is tried, in N
   */
  LinearAsks(Balance balance, Assembly assembly, double scale) {
    this.balance = balance;
    this.assembly = assembly;
    this.scale = scale;
  }

  Form of(Ask ask) {
    int columns = assembly.columns();
    Answer none = answer(ask, -1);
    if (!(none instanceof Answer.Value constant)) {
      return new Form(Goal.none(columns), 0, Dimension.NUMBER, Optional.of(none));
    }
    double[] multiples = new double[columns];
    for (int column = 0; column < columns; column++) {
      Answer one = answer(ask, column);
      if (!(one instanceof Answer.Value value)) {
        return new Form(Goal.none(columns), 0, Dimension.NUMBER, Optional.of(one));
      }
      multiples[column] = (value.si() - constant.si()) / scale;
    }
    return new Form(Goal.forces(multiples), constant.si(), constant.dimension(), Optional.empty());
  }

  /** The answer where the force of another ask, one unknown, is 1 N. */
  Answer atUnit(Ask ask, Ask unknown) {
    for (int column = 0; column < assembly.columns(); column++) {
      if (answer(unknown, column) instanceof Answer.Value value && value.si() != 0) {
        Answer answer = answer(ask, column);
        return answer instanceof Answer.Value couple
            ? new Answer.Value(couple.si() / Math.abs(value.si()), couple.dimension())
            : answer;
      }
    }
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, "it carries no force");
  }

  private Answer answer(Ask ask, int unit) {
    List<Double> forces = new ArrayList<>(Collections.nCopies(assembly.columns(), 0.0));
    if (unit >= 0) {
      double size = assembly.isCouple(unit) ? assembly.size() : 1;
      forces.set(unit, scale * size);
    }
    return balance.withForces(forces).answer(ask);
  }
}
