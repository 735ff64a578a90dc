package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
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
  private static final MaxIter MOST_STEPS = new MaxIter(20_000);
  private static final NonNegativeConstraint ANY_SIGN = new NonNegativeConstraint(false);

  /** Tried one after the other. */
  private static final List<PivotSelectionRule> RULES =
      List.of(PivotSelectionRule.DANTZIG, PivotSelectionRule.BLAND);

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
    for (PivotSelectionRule rule : RULES) {
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
    List<LinearConstraint> constraints = new ArrayList<>(program.size() + program.equalSize());
    for (int k = 0; k < program.size(); k++) {
      add(constraints, program.row(k), Relationship.LEQ, program.limit(k));
    }
    for (int k = 0; k < program.equalSize(); k++) {
      add(constraints, program.equalRow(k), Relationship.EQ, program.equalValue(k));
    }
    double size = largest(objective);
    double[] goal = size == 0 || size == 1 ? objective : divided(objective, size);
    try {
      PointValuePair pair =
          new SimplexSolver(ACCURACY, ULPS, Program.CUT_OFF)
              .optimize(
                  MOST_STEPS,
                  new LinearObjectiveFunction(new ArrayRealVector(goal, false), 0),
                  new Rows(constraints),
                  GoalType.MAXIMIZE,
                  ANY_SIGN,
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
    constraints.add(
        new LinearConstraint(new ArrayRealVector(row, false), relation, empty ? 0 : value));
  }

  /** Rows as they are: the library's set would look for equal ones, at the price of hashing all. */
  private static final class Rows extends LinearConstraintSet {

    private final List<LinearConstraint> rows;

    Rows(List<LinearConstraint> rows) {
      this.rows = rows;
    }

    @Override
    public List<LinearConstraint> getConstraints() {
      return rows;
    }
  }

  private static double[] divided(double[] row, double size) {
    double[] divided = row.clone();
    for (int j = 0; j < divided.length; j++) {
      divided[j] /= size;
    }
    return divided;
  }

  private static double largest(double[] row) {
    double largest = 0;
    for (double value : row) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
