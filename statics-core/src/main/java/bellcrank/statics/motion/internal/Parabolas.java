package bellcrank.statics.motion.internal;

import java.util.function.DoubleUnaryOperator;

/** Finds where a smooth function is greatest, beginning with three places round its peak. */
public final class Parabolas {

  /** Parabolas that are tried before Brent's method. */
  private static final int MOST = 6;

  /** Share of a range to which parabolas close in: beyond that a peak is flat to rounding. */
  private static final double CLOSED_IN = 1e-6;

  private Parabolas() {}

  /**
   * Where it is greatest between two ends, if a place between them with a greater value is known.
   * Where the function is smooth, the tops of a few parabolas close in on it; where it has a bend,
   * Brent's method does.
   */
  public static double top(DoubleUnaryOperator function, double from, double middle, double to) {
    double a = from;
    double b = middle;
    double c = to;
    double atA = function.applyAsDouble(a);
    double atB = function.applyAsDouble(b);
    double atC = function.applyAsDouble(c);
    for (int k = 0; k < MOST; k++) {
      double left = (b - a) * (atB - atC);
      double right = (b - c) * (atB - atA);
      double top = b - ((b - a) * left - (b - c) * right) / (2 * (left - right));
      // a top that is no number fails the comparison
      if (!(top > a && top < c)) {
        break;
      }
      double atTop = function.applyAsDouble(top);
      if (Math.abs(top - b) <= CLOSED_IN * (to - from)) {
        return atTop > atB ? top : b;
      }
      boolean isBetter = atTop > atB;
      if (isBetter == top > b) {
        a = isBetter ? b : top;
        atA = isBetter ? atB : atTop;
      } else {
        c = isBetter ? b : top;
        atC = isBetter ? atB : atTop;
      }
      b = isBetter ? top : b;
      atB = isBetter ? atTop : atB;
    }
    return Peak.of(function, a, c);
  }
}
