package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * What equations and conditions are worth at a limit: all w with Jᵀ·w = c whose entries for
 * conditions are 0 or more, J being the slopes of equations and active conditions.
 */
final class Multipliers {

  /** Share of the goal by which it may be missed, and by which a multiplier may be below zero. */
  private static final double MISS = 1e-8;

  private final DMatrixRMaj transposed;
  private final double[] goal;
  private final int equations;
  private final double[] one;
  private final boolean unique;
  private final DMatrixRMaj slopes;

  private Multipliers(
      DMatrixRMaj transposed,
      double[] goal,
      int equations,
      double[] one,
      boolean unique,
      DMatrixRMaj slopes) {
    this.transposed = transposed;
    this.goal = goal;
    this.equations = equations;
    this.one = one;
    this.unique = unique;
    this.slopes = slopes;
  }

  /** Least and greatest of a sum over all multipliers. */
  record Range(double least, double greatest) {}

  /**
   * The multipliers.
   *
   * @param slopes by equations, then conditions
   * @param goal multiples of the unknowns in the goal
   * @param equations how many of the rows are equations
   * @return empty if there are none, or slopes are not defined
   */
  static Optional<Multipliers> of(DMatrixRMaj slopes, double[] goal, int equations) {
    for (double slope : slopes.data) {
      if (!Double.isFinite(slope)) {
        return Optional.empty();
      }
    }
    DMatrixRMaj transposed = CommonOps_DDRM.transpose(slopes, null);
    Factored factored = Factored.leastSquares(transposed);
    DMatrixRMaj right = DMatrixRMaj.wrap(goal.length, 1, goal.clone());
    double size = Math.max(1e-300, CommonOps_DDRM.elementMaxAbs(right));
    if (factored.leftOver(right) > MISS * size) {
      return Optional.empty();
    }
    if (factored.rank() == transposed.numCols) {
      double[] one = factored.solve(right).data;
      for (int k = equations; k < one.length; k++) {
        if (one[k] < -MISS * size) {
          return Optional.empty();
        }
      }
      return Optional.of(new Multipliers(transposed, goal, equations, one, true, slopes));
    }
    Multipliers several =
        new Multipliers(transposed, goal, equations, new double[0], false, slopes);
    // in the middle of all: how much the conditions can be worth together, and how little
    double[] middle = new double[transposed.numCols];
    DMatrixRMaj worth = new DMatrixRMaj(middle.length, 1);
    for (int k = equations; k < middle.length; k++) {
      worth.zero();
      worth.set(k, 0, 1);
      Optional<double[]> most = several.extreme(worth, GoalType.MAXIMIZE);
      Optional<double[]> least = several.extreme(worth, GoalType.MINIMIZE);
      if (most.isEmpty() && least.isEmpty()) {
        return Optional.empty();
      }
      double[] far = most.or(() -> least).orElseThrow();
      for (int i = 0; i < middle.length; i++) {
        middle[i] += far[i] / (middle.length - equations);
      }
    }
    return Optional.of(new Multipliers(transposed, goal, equations, middle, false, slopes));
  }

  boolean isOne() {
    return unique;
  }

  /** Which conditions are worth something under some multipliers. */
  List<Boolean> binding() {
    double size = 0;
    for (double worth : one) {
      size = Math.max(size, Math.abs(worth));
    }
    List<Boolean> all = new ArrayList<>();
    for (int k = equations; k < one.length; k++) {
      all.add(one[k] > MISS * size);
    }
    return all;
  }

  /** Changes of the unknowns that leave all equations and binding conditions as they are. */
  List<double[]> free() {
    DMatrixRMaj held = slopes.copy();
    List<Boolean> binding = binding();
    for (int k = 0; k < binding.size(); k++) {
      for (int column = 0; column < held.numCols && !binding.get(k); column++) {
        held.set(equations + k, column, 0);
      }
    }
    return Factored.leastSquares(held).free();
  }

  /** Sum of the multipliers times rates. */
  double worth(DMatrixRMaj rates) {
    double sum = 0;
    for (int k = 0; k < one.length; k++) {
      sum += one[k] * rates.get(k, 0);
    }
    return sum;
  }

  /** Least and greatest of that sum; empty if it has no bound. */
  Optional<Range> range(DMatrixRMaj rates) {
    if (unique) {
      double sum = worth(rates);
      return Optional.of(new Range(sum, sum));
    }
    Optional<double[]> most = extreme(rates, GoalType.MAXIMIZE);
    Optional<double[]> least = extreme(rates, GoalType.MINIMIZE);
    return most.isEmpty() || least.isEmpty()
        ? Optional.empty()
        : Optional.of(new Range(sum(least.get(), rates), sum(most.get(), rates)));
  }

  private static double sum(double[] multipliers, DMatrixRMaj rates) {
    double sum = 0;
    for (int k = 0; k < multipliers.length; k++) {
      sum += multipliers[k] * rates.get(k, 0);
    }
    return sum;
  }

  private Optional<double[]> extreme(DMatrixRMaj rates, GoalType sense) {
    List<LinearConstraint> all = new ArrayList<>();
    double size = Math.max(1e-300, CommonOps_DDRM.elementMaxAbs(transposed));
    for (int row = 0; row < transposed.numRows; row++) {
      double[] multiples = new double[transposed.numCols];
      double largest = 0;
      for (int k = 0; k < multiples.length; k++) {
        multiples[k] = transposed.get(row, k);
        largest = Math.max(largest, Math.abs(multiples[k]));
      }
      if (largest > 1e-12 * size) {
        all.add(new LinearConstraint(multiples, Relationship.EQ, goal[row]));
      }
    }
    for (int k = equations; k < transposed.numCols; k++) {
      double[] multiples = new double[transposed.numCols];
      multiples[k] = 1;
      all.add(new LinearConstraint(multiples, Relationship.GEQ, 0));
    }
    double largest = Math.max(1e-300, CommonOps_DDRM.elementMaxAbs(rates));
    double[] scaled = new double[transposed.numCols];
    for (int k = 0; k < scaled.length; k++) {
      scaled[k] = rates.get(k, 0) / largest;
    }
    try {
      return Optional.of(
          new SimplexSolver()
              .optimize(
                  new LinearObjectiveFunction(scaled, 0),
                  new LinearConstraintSet(all),
                  sense,
                  new NonNegativeConstraint(false))
              .getPoint());
    } catch (MathIllegalStateException none) {
      return Optional.empty();
    }
  }
}
