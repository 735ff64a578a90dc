package bellcrank.statics.strength.internal;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Finds the least number above zero at which a function reaches one. */
public final class FirstCrossing {

  /** Steps in which a range is looked at. */
  public static final int STEPS = 16;

  /** Relative accuracy of the number. */
  public static final double ACCURACY = 1e-13;

  /** Beyond this number nothing is looked for. */
  public static final double FARTHEST = 1e9;

  private static final int ORDER = 5;
  private static final int MOST = 200;

  private FirstCrossing() {}

  /**
   * Searches upwards from zero, first in steps up to one, then in steps that grow. Where it is
   * below one even at the end, only the first stretch is looked at in steps.
   *
   * @param function below one at zero
   * @param end no number beyond it is looked at
   * @return the number; empty if the function stays below one
   */
  public static OptionalDouble of(DoubleUnaryOperator function, double end) {
    double last = Math.min(end, FARTHEST);
    boolean reached = function.applyAsDouble(last) >= 1;
    double from = 0;
    double to = Math.min(1, last);
    while (from < last) {
      for (int k = 1; k <= STEPS; k++) {
        double next = k == STEPS ? to : from + (to - from) * k / STEPS;
        if (function.applyAsDouble(next) >= 1) {
          return OptionalDouble.of(root(function, from + (to - from) * (k - 1) / STEPS, next));
        }
      }
      if (!reached) {
        return OptionalDouble.empty();
      }
      from = to;
      to = Math.min(2 * to, last);
    }
    return OptionalDouble.empty();
  }

  /**
   * Searches upwards from zero where the function is convex: its chords point beyond the crossing,
   * so a few looks are enough; where it is below one at both ends it stays so.
   *
   * @param function convex, or never falling; below one at zero
   * @param end no number beyond it is looked at
   * @return the number; empty if the function stays below one
   */
  public static OptionalDouble ofConvex(DoubleUnaryOperator function, double end) {
    if (function.applyAsDouble(Math.min(end, FARTHEST)) < 1) {
      return OptionalDouble.empty();
    }
    double start = function.applyAsDouble(0);
    double below = 0;
    double reach = Math.min(1, end);
    while (below < end && below < FARTHEST) {
      double value = function.applyAsDouble(reach);
      if (value >= 1) {
        return OptionalDouble.of(value == 1 ? reach : root(function, below, reach));
      }
      double chord =
          value > start ? reach + (1 - value) * reach / (value - start) : Double.POSITIVE_INFINITY;
      below = reach;
      reach = Math.min(end, Math.min(FARTHEST, chord < 2 * FARTHEST ? chord : 2 * reach));
      if (reach > below && Math.abs(function.applyAsDouble(reach) - 1) <= ACCURACY) {
        return OptionalDouble.of(reach);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The first crossing below a number at which the function is one or more.
   *
   * @param function below one at zero
   * @param end above zero
   * @return where it reaches one
   */
  public static double below(DoubleUnaryOperator function, double end) {
    for (int k = 1; k < STEPS; k++) {
      double next = end * k / STEPS;
      if (function.applyAsDouble(next) >= 1) {
        return root(function, end * (k - 1) / STEPS, next);
      }
    }
    return root(function, end - end / STEPS, end);
  }

  /**
   * A crossing between two numbers.
   *
   * @param function below one at the first, one or more at the second
   * @param below the lower number
   * @param above the higher number
   * @return where it is one
   */
  public static double root(DoubleUnaryOperator function, double below, double above) {
    double first = function.applyAsDouble(below) - 1;
    double last = function.applyAsDouble(above) - 1;
    if (last == 0) {
      return above;
    }
    BracketingNthOrderBrentSolver solver =
        new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY * Math.max(1, above), 0, ORDER);
    double chord = below - first * (above - below) / (last - first);
    return solver.solve(
        MOST,
        at -> at == below ? first : at == above ? last : function.applyAsDouble(at) - 1,
        below,
        above,
        chord > below && chord < above ? chord : (below + above) / 2);
  }
}
