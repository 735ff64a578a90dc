package bellcrank.statics.motion.internal;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** Finds where a function of one variable is greatest, by Brent's method. */
public final class Peak {

  private static final double RELATIVE = 1e-9;
  private static final double ABSOLUTE = 1e-12;
  private static final int MOST = 200;

  private Peak() {}

  /** Where it is greatest between two ends. */
  public static double of(DoubleUnaryOperator function, double from, double to) {
    return new BrentOptimizer(RELATIVE, ABSOLUTE)
        .optimize(
            new MaxEval(MOST),
            new UnivariateObjectiveFunction(function::applyAsDouble),
            GoalType.MAXIMIZE,
            new SearchInterval(from, to))
        .getPoint();
  }
}
