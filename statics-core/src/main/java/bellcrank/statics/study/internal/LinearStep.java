package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The step within a box that makes a linear value least, with a price on what linear goals are
 * missed by.
 */
final class LinearStep {

  private static final MaxIter MOST_STEPS = new MaxIter(2_000);

  private final double value;
  private final double[] slope;
  private final double price;
  private final List<Row> rows = new ArrayList<>();

  private record Row(List<Double> slope, double miss, boolean isOneValue) {}

  LinearStep(double value, double[] slope, double price) {
    this.value = value;
    this.slope = slope.clone();
    this.price = price;
  }

  /** Adds a goal: by how much it is missed now, and how that changes. */
  void goal(double[] slopes, double miss, boolean isOneValue) {
    List<Double> row = new ArrayList<>();
    for (double one : slopes) {
      row.add(one);
    }
    rows.add(new Row(row, miss, isOneValue));
  }

  /** What the value, and what is missed at its price, come to after a step. */
  double height(double[] step) {
    double height = value + dot(slope, step);
    for (Row row : rows) {
      double missed = row.miss();
      for (int i = 0; i < step.length; i++) {
        missed += row.slope().get(i) * step[i];
      }
      height += price * (row.isOneValue() ? Math.abs(missed) : Math.max(0, missed));
    }
    return height;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The step between bounds on each coordinate; empty if the program could not be solved. */
  Optional<double[]> between(double[] least, double[] greatest) {
    int n = slope.length;
    int width = n;
    for (Row row : rows) {
      width += row.isOneValue() ? 2 : 1;
    }
    double[] cost = new double[width];
    System.arraycopy(slope, 0, cost, 0, n);
    List<LinearConstraint> constraints = new ArrayList<>();
    // coordinates are counted from the least step, so that none is below zero
    for (int i = 0; i < n; i++) {
      double[] unit = new double[width];
      unit[i] = 1;
      constraints.add(new LinearConstraint(unit, Relationship.LEQ, greatest[i] - least[i]));
    }
    int slack = n;
    for (Row row : rows) {
      double[] sum = new double[width];
      double right = -row.miss();
      for (int i = 0; i < n; i++) {
        sum[i] = row.slope().get(i);
        right -= sum[i] * least[i];
      }
      sum[slack] = -1;
      cost[slack++] = price;
      if (row.isOneValue()) {
        sum[slack] = 1;
        cost[slack++] = price;
      }
      Relationship relation = row.isOneValue() ? Relationship.EQ : Relationship.LEQ;
      constraints.add(new LinearConstraint(sum, relation, right));
    }
    try {
      double[] found =
          new SimplexSolver()
              .optimize(
                  MOST_STEPS,
                  new LinearObjectiveFunction(cost, 0),
                  new LinearConstraintSet(constraints),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(true),
                  PivotSelectionRule.BLAND)
              .getPoint();
      double[] step = new double[n];
      for (int i = 0; i < n; i++) {
        step[i] = Math.max(least[i], Math.min(greatest[i], found[i] + least[i]));
      }
      return Optional.of(step);
    } catch (MathIllegalStateException failed) {
      return Optional.empty();
    }
  }
}
