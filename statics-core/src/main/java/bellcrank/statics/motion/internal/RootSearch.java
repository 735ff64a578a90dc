package bellcrank.statics.motion.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver.Interval;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds all zeros of a function of one variable in a range, on a grid: changes of sign by Brent's
 * method, zeros that are only touched by the least size between samples, and stretches of zeros. A
 * change of sign at which the function does not shrink is a jump or pole and no zero. The function
 * may lack a value in places.
 */
public final class RootSearch {

  /** Number of steps of the grid. */
  public static final int STEPS = 240;

  /** Share of the range to which a zero is found. */
  private static final double ACCURACY = 1e-13;

  /** A zero shrinks at least to this share of the values on the grid; a jump does not. */
  private static final double SHRINKS = 1e-5;

  /** Zeros nearer to one another than this share of the range are one. */
  private static final double SAME = 1e-11;

  private static final int MOST = 1000;
  private static final int ORDER = 5;
  private static final int DEEPEST = 8;
  private static final int HALVINGS = 60;

  private final DoubleFunction<OptionalDouble> function;
  private final double from;
  private final double to;
  private final double zero;

  // shares of the range
  private final List<Double> roots = new ArrayList<>();
  private final List<double[]> stretches = new ArrayList<>();
  private double nearest = -1;
  private double miss = Double.POSITIVE_INFINITY;

  /** Where the function has no value, on the way of a solver. */
  private static final class Gap extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Gap() {
      super("no value", null, false, false);
    }
  }

  private RootSearch(DoubleFunction<OptionalDouble> function, double from, double to, double zero) {
    this.function = function;
    this.from = from;
    this.to = to;
    this.zero = zero;
  }

  /**
   * Searches a range.
   *
   * @param zero size of a value that counts as zero
   */
  public static RootSearch over(
      DoubleFunction<OptionalDouble> function, double from, double to, double zero) {
    RootSearch search = new RootSearch(function, from, to, zero);
    search.run();
    return search;
  }

  /** Single zeros in ascending order. */
  public List<Double> roots() {
    return roots.stream().map(this::place).toList();
  }

  /** Ends of stretches along which it is zero: from and to in turn, in ascending order. */
  public List<Double> stretches() {
    List<Double> ends = new ArrayList<>();
    for (double[] stretch : stretches) {
      ends.add(place(stretch[0]));
      ends.add(place(stretch[1]));
    }
    return ends;
  }

  /** Where the value was least in size; empty if there was no value. */
  public OptionalDouble nearest() {
    return nearest < 0 ? OptionalDouble.empty() : OptionalDouble.of(place(nearest));
  }

  private double place(double share) {
    return share == 1 ? to : from + share * (to - from);
  }

  /** The value at a share of the range; not a number where there is none. */
  private double value(double share) {
    OptionalDouble found = function.apply(place(share));
    if (found.isEmpty() || !Double.isFinite(found.getAsDouble())) {
      return Double.NaN;
    }
    double value = found.getAsDouble();
    if (Math.abs(value) < miss) {
      miss = Math.abs(value);
      nearest = share;
    }
    return value;
  }

  private boolean isZero(double value) {
    return Math.abs(value) <= zero;
  }

  private void run() {
    double[] at = new double[STEPS + 1];
    double[] values = new double[STEPS + 1];
    for (int k = 0; k <= STEPS; k++) {
      at[k] = (double) k / STEPS;
      values[k] = value(at[k]);
    }
    boolean[] done = findStretches(at, values);
    for (int k = 0; k <= STEPS; k++) {
      if (isZero(values[k]) && !done[k]) {
        atSample(at, values, k);
      }
    }
    for (int k = 0; k < STEPS; k++) {
      if (!isZero(values[k]) && !isZero(values[k + 1])) {
        between(at[k], values[k], at[k + 1], values[k + 1], 0);
      }
    }
    for (int k = 0; k <= STEPS; k++) {
      touching(at, values, k);
    }
    tidy();
  }

  /** Runs of zeros on the grid; tells which samples belong to one. */
  private boolean[] findStretches(double[] at, double[] values) {
    boolean[] done = new boolean[STEPS + 1];
    int k = 0;
    while (k <= STEPS) {
      int last = k;
      while (last <= STEPS && isZero(values[last])) {
        done[last] = last > k || (last < STEPS && isZero(values[last + 1]));
        last++;
      }
      if (last - k >= 2) {
        double first = k == 0 ? 0 : edge(at[k], at[k - 1]);
        double end = last > STEPS ? 1 : edge(at[last - 1], at[last]);
        stretches.add(new double[] {first, end});
      }
      k = Math.max(last, k + 1);
    }
    return done;
  }

  /** Where zeros end between one and a place that is none. */
  private double edge(double inside, double outside) {
    double in = inside;
    double out = outside;
    for (int round = 0; round < HALVINGS && Math.abs(out - in) > ACCURACY; round++) {
      double middle = (in + out) / 2;
      if (isZero(value(middle))) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  /** A sample that is zero; where the sign changes there, the zero is found more sharply. */
  private void atSample(double[] at, double[] values, int k) {
    if (k > 0 && k < STEPS && values[k - 1] * values[k + 1] < 0 && values[k] != 0) {
      bracket(at[k - 1], values[k - 1], at[k + 1], values[k + 1], 0);
    } else {
      roots.add(at[k]);
    }
  }

  private void between(double a, double fa, double b, double fb, int depth) {
    if (Double.isNaN(fa) && Double.isNaN(fb)) {
      return;
    }
    if (Double.isNaN(fa)) {
      toEdge(b, fb, a);
    } else if (Double.isNaN(fb)) {
      toEdge(a, fa, b);
    } else if (fa == 0 || fb == 0) {
      roots.add(fa == 0 ? a : b);
    } else if (fa * fb < 0) {
      bracket(a, fa, b, fb, depth);
    }
  }

  /** Looks from a place with a value up to where values end. */
  private void toEdge(double a, double fa, double without) {
    double in = a;
    double value = fa;
    double out = without;
    for (int round = 0; round < HALVINGS && Math.abs(out - in) > ACCURACY; round++) {
      double middle = (in + out) / 2;
      double there = value(middle);
      if (Double.isNaN(there)) {
        out = middle;
      } else {
        in = middle;
        value = there;
      }
    }
    if (isZero(value)) {
      roots.add(in);
    } else if (value * fa < 0) {
      bracket(Math.min(a, in), a < in ? fa : value, Math.max(a, in), a < in ? value : fa, 0);
    }
  }

  private void bracket(double a, double fa, double b, double fb, int depth) {
    double middle = (a + b) / 2;
    Interval found;
    try {
      found =
          new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, Double.MIN_NORMAL, ORDER)
              .solveInterval(MOST, this::valueOrGap, a, b, middle);
    } catch (Gap gap) {
      if (depth < DEEPEST) {
        double fm = value(middle);
        between(a, fa, middle, fm, depth + 1);
        between(middle, fm, b, fb, depth + 1);
      }
      return;
    } catch (MathIllegalStateException slow) {
      return;
    }
    double left = Math.abs(found.getLeftValue());
    double right = Math.abs(found.getRightValue());
    boolean shrinks = Math.max(left, right) <= SHRINKS * Math.max(Math.abs(fa), Math.abs(fb));
    if (shrinks || Math.min(left, right) <= zero) {
      roots.add(left <= right ? found.getLeftAbscissa() : found.getRightAbscissa());
    }
  }

  private double valueOrGap(double share) {
    double value = value(share);
    if (Double.isNaN(value)) {
      throw new Gap();
    }
    return value;
  }

  /** A sample that is least in size among its neighbours: zeros may hide beside it. */
  private void touching(double[] at, double[] values, int k) {
    int before = Math.max(0, k - 1);
    int after = Math.min(STEPS, k + 1);
    double size = Math.abs(values[k]);
    boolean least =
        values[k] * values[before] > 0
            && values[k] * values[after] > 0
            && size <= Math.abs(values[before])
            && size <= Math.abs(values[after]);
    if (!least || isZero(values[k])) {
      return;
    }
    double sense = Math.signum(values[k]);
    double low = leastBetween(at[before], at[after], sense);
    double value = value(low);
    if (isZero(value)) {
      roots.add(low);
    } else if (value * sense < 0) {
      bracket(at[before], values[before], low, value, 0);
      bracket(low, value, at[after], values[after], 0);
    }
  }

  private double leastBetween(double a, double b, double sense) {
    try {
      return new BrentOptimizer(1e-15, 1e-15)
          .optimize(
              new MaxEval(MOST),
              new UnivariateObjectiveFunction(
                  share -> {
                    double value = value(share);
                    return Double.isNaN(value) ? Double.MAX_VALUE : sense * value;
                  }),
              GoalType.MINIMIZE,
              new SearchInterval(a, b))
          .getPoint();
    } catch (MathIllegalStateException slow) {
      return nearest >= a && nearest <= b ? nearest : a;
    }
  }

  private void tidy() {
    Collections.sort(roots);
    List<Double> kept = new ArrayList<>();
    for (double root : roots) {
      boolean again = !kept.isEmpty() && root - kept.get(kept.size() - 1) <= SAME;
      boolean within = stretches.stream().anyMatch(s -> root >= s[0] - SAME && root <= s[1] + SAME);
      if (!again && !within) {
        kept.add(root);
      }
    }
    roots.clear();
    roots.addAll(kept);
  }
}
