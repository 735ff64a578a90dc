package bellcrank.statics.strength.internal;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** Finds where a function is least between two places, by Brent's method. */
public final class Lowest {

  /** Relative accuracy of the place; the value is about the square of it off. */
  public static final double ACCURACY = 1e-9;

  private static final int MOST = 200;

  private Lowest() {}

  /**
   * Searches a range with one valley in it.
   *
   * @param function the function
   * @param from where the range starts
   * @param to where it ends
   * @return where the function is least
   */
  public static double of(DoubleUnaryOperator function, double from, double to) {
    return new BrentOptimizer(ACCURACY, ACCURACY * (to - from))
        .optimize(
            new MaxEval(MOST),
            GoalType.MINIMIZE,
            new UnivariateObjectiveFunction(function::applyAsDouble),
            new SearchInterval(from, to))
        .getPoint();
  }
}
