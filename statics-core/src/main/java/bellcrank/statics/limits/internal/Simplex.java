package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * Solves linear programs with the simplex solver of Hipparchus; the only place that knows it. The
 * answer is checked by substitution. Where Dantzig's choice of pivots ends badly, Bland's, which
 * cannot cycle, is tried.
 */
final class Simplex {

  /** By how much a point may miss a row, relative to the size of what the row adds up. */
  static final double MISS = 1e-9;

  /** The same where there are no variables, so that nothing but the forces is rounded. */
  private static final double MISS_OF_NUMBERS = 1e-12;

  /** Accuracy asked of the solver. */
  private static final double ACCURACY = 1e-10;

  private static final int ULPS = 10;
  private static final int MOST_STEPS = 20_000;

  private Simplex() {}

  /**
   * Makes a sum greatest.
   *
   * @param program the rows
   * @param objective multiples of the variables
   * @return how it comes out
   */
  static Optimum maximize(Program program, double[] objective) {
    if (program.variables() == 0) {
      return program.miss(objective) <= MISS_OF_NUMBERS
          ? Optimum.found(0, objective)
          : Optimum.infeasible();
    }
    for (PivotSelectionRule rule :
        new PivotSelectionRule[] {PivotSelectionRule.DANTZIG, PivotSelectionRule.BLAND}) {
      try {
        Optimum last = solve(program, objective, rule);
        if (!last.isFound() || program.miss(last.x) <= MISS) {
          return last;
        }
      } catch (MathIllegalStateException e) {
        if (e.getSpecifier() != LocalizedCoreFormats.MAX_COUNT_EXCEEDED) {
          throw e;
        }
      }
    }
    return Optimum.failed();
  }

  private static Optimum solve(Program program, double[] objective, PivotSelectionRule rule) {
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int k = 0; k < program.size(); k++) {
      add(constraints, program.row(k), Relationship.LEQ, program.limit(k));
    }
    for (int k = 0; k < program.equalSize(); k++) {
      add(constraints, program.equalRow(k), Relationship.EQ, program.equalValue(k));
    }
    double size = largest(objective);
    double[] goal = objective.clone();
    for (int j = 0; j < goal.length && size > 0; j++) {
      goal[j] /= size;
    }
    try {
      PointValuePair pair =
          new SimplexSolver(ACCURACY, ULPS, Program.CUT_OFF)
              .optimize(
                  new MaxIter(MOST_STEPS),
                  new LinearObjectiveFunction(goal, 0),
                  new LinearConstraintSet(constraints),
                  GoalType.MAXIMIZE,
                  new NonNegativeConstraint(false),
                  rule);
      double[] x = pair.getPoint();
      double value = 0;
      for (int j = 0; j < x.length; j++) {
        value += objective[j] * x[j];
      }
      return Optimum.found(value, x);
    } catch (MathIllegalStateException e) {
      if (e.getSpecifier() == LocalizedOptimFormats.NO_FEASIBLE_SOLUTION) {
        return Optimum.infeasible();
      }
      if (e.getSpecifier() == LocalizedOptimFormats.UNBOUNDED_SOLUTION) {
        return Optimum.unbounded();
      }
      throw e;
    }
  }

  private static void add(
      List<LinearConstraint> constraints, double[] row, Relationship relation, double value) {
    // a row without variables still has to hold, but not beyond rounding
    boolean empty = Math.abs(value) <= MISS && largest(row) == 0;
    constraints.add(new LinearConstraint(row, relation, empty ? 0 : value));
  }

  private static double largest(double[] row) {
    double largest = 0;
    for (double value : row) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
