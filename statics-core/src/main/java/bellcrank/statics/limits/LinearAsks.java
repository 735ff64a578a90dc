package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
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

  /**
   * Why a size, a direction or the couple that turns a screw is no part of a range of quotients.
   */
  private static final String NOT_LINEAR =
      "a quotient has a range only of what grows in proportion with the forces, and turns with"
          + " them: of x or y, not of a size";

  /** Share of what is added up that may be left over by rounding. */
  private static final double ROUNDING = 1e-9;

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
    Answer none = answer(ask, new double[columns]);
    if (!(none instanceof Answer.Value constant)) {
      return refused(none);
    }
    double[] multiples = new double[columns];
    double[] opposite = new double[columns];
    double sum = 0;
    double size = Math.abs(constant.si());
    for (int column = 0; column < columns; column++) {
      Answer one = answer(ask, unit(column));
      if (!(one instanceof Answer.Value value)) {
        return refused(one);
      }
      double change = value.si() - constant.si();
      multiples[column] = change / scale;
      opposite[column] = -1;
      sum += change;
      size += Math.abs(change);
    }
    boolean linear =
        answer(ask, opposite) instanceof Answer.Value turned
            && Math.abs(turned.si() - (constant.si() - sum)) <= ROUNDING * size;
    return linear
        ? new Form(Goal.forces(multiples), constant.si(), constant.dimension(), Optional.empty())
        : refused(new Answer.Unanswered(Answer.Reason.NOT_DEFINED, NOT_LINEAR));
  }

  private Form refused(Answer why) {
    return new Form(Goal.none(assembly.columns()), 0, Dimension.NUMBER, Optional.of(why));
  }

  /** The answer where the force of another ask, one unknown, is 1 N. */
  Answer atUnit(Ask ask, Ask unknown) {
    for (int column = 0; column < assembly.columns(); column++) {
      if (answer(unknown, unit(column)) instanceof Answer.Value value && value.si() != 0) {
        Answer answer = answer(ask, unit(column));
        return answer instanceof Answer.Value couple
            ? new Answer.Value(couple.si() / Math.abs(value.si()), couple.dimension())
            : answer;
      }
    }
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, "it carries no force");
  }

  private double[] unit(int column) {
    double[] unit = new double[assembly.columns()];
    unit[column] = 1;
    return unit;
  }

  private Answer answer(Ask ask, double[] units) {
    List<Double> forces = new ArrayList<>();
    for (int column = 0; column < units.length; column++) {
      forces.add(units[column] * scale * (assembly.isCouple(column) ? assembly.size() : 1));
    }
    return balance.withForces(forces).answer(ask);
  }
}
