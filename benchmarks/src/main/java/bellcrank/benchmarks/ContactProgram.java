package bellcrank.benchmarks;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.ArrayList;
import java.util.List;
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
 * The greatest multiple λ of a load that rough contacts bear, as the bare numbers of a linear
 * program in the free forces and λ: tangential forces within μN on either side, which leaves no
 * normal force below zero. Each row is divided by its largest entry. It is solved by the simplex
 * solver of another library and nothing besides, as the measure of speed.
 */
final class ContactProgram {

  /** Below this share a combined coefficient is rounding. */
  private static final double ROUNDING = 1e-13;

  private static final double ACCURACY = 1e-10;
  private static final double CUT_OFF = 1e-12;
  private static final int ULPS = 10;
  private static final int MOST_STEPS = 20_000;

  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> limits = new ArrayList<>();
  private final double[] goal;
  private final LinearConstraintSet ready;

  private ContactProgram(ContactEquations equations) {
    double[][] parts = new double[equations.freedom() + 2][];
    for (int z = 0; z < equations.freedom(); z++) {
      parts[z] = equations.free(z);
    }
    parts[equations.freedom()] = equations.varied();
    parts[equations.freedom() + 1] = equations.fixed();
    for (int k = 0; k < equations.contacts().size(); k++) {
      Contact contact = equations.contacts().get(k);
      row(parts, 2 * k, -contact.friction(), 1);
      row(parts, 2 * k, -contact.friction(), -1);
    }
    goal = new double[equations.freedom() + 1];
    goal[equations.freedom()] = 1;
    ready = constraints();
  }

  /**
   * The program of a device.
   *
   * @param device members on rough contacts, under forces and weights
   * @param pose where the members are
   * @param loadCase factors on the loads
   * @param varied name of the load that is multiplied
   * @return its numbers
   */
  static ContactProgram of(Device device, Pose pose, LoadCase loadCase, String varied) {
    return new ContactProgram(ContactEquations.of(device, pose, loadCase, varied));
  }

  /** Asks that normal · N + tangential · T ≤ 0. */
  private void row(double[][] parts, int column, double normal, double tangential) {
    int variables = parts.length - 1;
    double[] row = new double[variables];
    double largest = 0;
    for (int z = 0; z < variables; z++) {
      double entry = normal * parts[z][column] + tangential * parts[z][column + 1];
      row[z] = Math.abs(entry) < ROUNDING ? 0 : entry;
      largest = Math.max(largest, Math.abs(row[z]));
    }
    for (int z = 0; z < variables; z++) {
      row[z] /= largest;
    }
    double[] constant = parts[variables];
    rows.add(row);
    limits.add(-(normal * constant[column] + tangential * constant[column + 1]) / largest);
  }

  int variables() {
    return goal.length;
  }

  int size() {
    return rows.size();
  }

  private LinearConstraintSet constraints() {
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int k = 0; k < rows.size(); k++) {
      constraints.add(new LinearConstraint(rows.get(k), Relationship.LEQ, limits.get(k)));
    }
    return new LinearConstraintSet(constraints);
  }

  /** The greatest multiple, from the numbers. */
  double solve() {
    return solve(constraints());
  }

  /** The greatest multiple, from conditions that the solver has taken in before. */
  double solveReady() {
    return solve(ready);
  }

  private double solve(LinearConstraintSet constraints) {
    return new SimplexSolver(ACCURACY, ULPS, CUT_OFF)
        .optimize(
            new MaxIter(MOST_STEPS),
            new LinearObjectiveFunction(goal, 0),
            constraints,
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(false),
            PivotSelectionRule.DANTZIG)
        .getValue();
  }
}
