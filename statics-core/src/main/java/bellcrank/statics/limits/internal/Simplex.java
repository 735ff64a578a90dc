package bellcrank.statics.limits.internal;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
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
  static final double ACCURACY = 1e-10;

  /**
   * Up to this many variables the library is believed where it says that a sum has no end, and
   * independent parts are not solved apart.
   */
  private static final int SURE = 40;

  /** Far enough, in loads, for a sum that has no end. */
  private static final double FAR = 1e6;

  private static final int ULPS = 10;
  private static final MaxIter MOST_STEPS = new MaxIter(20_000);

  /** Tried one after the other. */
  private static final List<PivotSelectionRule> RULES =
      List.of(PivotSelectionRule.DANTZIG, PivotSelectionRule.BLAND);

  private final Solver solver = new Solver();

  /**
   * Makes a sum greatest.
   *
   * @param program the rows
   * @param objective multiples of the variables
   * @return how it comes out
   */
  static Optimum maximize(Program program, double[] objective) {
    return program.variables() > SURE
        ? IndependentParts.maximize(program, objective)
        : new Simplex().greatest(program, objective);
  }

  /** The same, in storage that serves for one program after the other. */
  Optimum greatest(Program program, double[] objective) {
    if (program.variables() == 0) {
      return program.miss(objective) <= MISS_OF_NUMBERS
          ? Optimum.found(0, objective)
          : Optimum.infeasible();
    }
    if (program.variables() == 1 && objective[0] != 0) {
      return OneVariable.maximize(program, objective[0], ACCURACY);
    }
    solver.take(program, objective);
    for (PivotSelectionRule rule : RULES) {
      try {
        Optimum last = solve(objective, rule);
        if (last.kind == Optimum.Kind.UNBOUNDED && program.variables() > SURE) {
          last = confirmed(program, objective, rule);
        }
        if (last.isFound() ? program.miss(last.x) <= MISS : last.kind != Optimum.Kind.FAILED) {
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

  /**
   * What is said to grow without end has to reach a far number: over many variables the library
   * takes rounding for a way out.
   */
  private Optimum confirmed(Program program, double[] objective, PivotSelectionRule rule) {
    double far = FAR * largest(objective);
    program.atMost(objective.clone(), far);
    solver.take(program, objective);
    Optimum last = solve(objective, rule);
    program.dropLast();
    solver.take(program, objective);
    if (last.isFound() && last.value >= far / 2) {
      return program.miss(last.x) <= MISS ? Optimum.unbounded() : Optimum.failed();
    }
    return last.isFound() ? last : Optimum.failed();
  }

  private Optimum solve(double[] objective, PivotSelectionRule rule) {
    try {
      double[] x = solver.optimize(MOST_STEPS, GoalType.MAXIMIZE, rule).getPointRef();
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

  /**
   * The library's solver, reading the program where it stands: handed over as data its rows would
   * be looked through for equal ones, at the price of hashing all.
   */
  private static final class Solver extends SimplexSolver {

    private List<LinearConstraint> rows = List.of();
    private Row[] made = {};
    private LinearObjectiveFunction goal = new LinearObjectiveFunction(Row.NONE, 0);

    Solver() {
      super(ACCURACY, ULPS, Program.CUT_OFF);
    }

    void take(Program program, double[] objective) {
      int most = program.size();
      int count = most + program.equalSize();
      if (made.length != count) {
        made = new Row[count];
        for (int k = 0; k < count; k++) {
          made[k] = new Row();
        }
        rows = Arrays.asList(made);
      }
      for (int k = 0; k < most; k++) {
        made[k].put(program.row(k), Relationship.LEQ, program.limit(k));
      }
      for (int k = most; k < count; k++) {
        made[k].put(program.equalRow(k - most), Relationship.EQ, program.equalValue(k - most));
      }
      double size = largest(objective);
      double[] multiples = size == 0 || size == 1 ? objective : divided(objective, size);
      goal = new LinearObjectiveFunction(new Numbers(multiples), 0);
    }

    @Override
    protected Collection<LinearConstraint> getConstraints() {
      return rows;
    }

    @Override
    protected LinearObjectiveFunction getFunction() {
      return goal;
    }

    @Override
    protected boolean isRestrictedToNonNegative() {
      return false;
    }
  }

  /** A row whose numbers may change from program to program. */
  private static final class Row extends LinearConstraint {

    static final Numbers NONE = new Numbers(new double[0]);

    private static final long serialVersionUID = 1;

    private transient Numbers multiples = NONE;
    private Relationship relation = Relationship.LEQ;
    private double limit;

    Row() {
      super(NONE, Relationship.LEQ, 0);
    }

    void put(double[] row, Relationship is, double value) {
      if (multiples.getDataRef() != row) {
        multiples = new Numbers(row);
      }
      relation = is;
      // a row without variables still has to hold, but not beyond rounding
      limit = Math.abs(value) <= MISS && largest(row) == 0 ? 0 : value;
    }

    @Override
    public RealVector getCoefficients() {
      return multiples;
    }

    @Override
    public Relationship getRelationship() {
      return relation;
    }

    @Override
    public double getValue() {
      return limit;
    }
  }

  /** Numbers that the library may read but not change; it would copy them each time it reads. */
  private static final class Numbers extends ArrayRealVector {

    private static final long serialVersionUID = 1;

    Numbers(double[] numbers) {
      super(numbers, false);
    }

    @Override
    public double[] toArray() {
      return getDataRef();
    }

    @Override
    public RealVector mapMultiply(double multiple) {
      double[] multiplied = new double[getDataRef().length];
      for (int j = 0; j < multiplied.length; j++) {
        multiplied[j] = getDataRef()[j] * multiple;
      }
      return new Numbers(multiplied);
    }
  }
}
