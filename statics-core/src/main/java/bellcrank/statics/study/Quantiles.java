package bellcrank.statics.study;

/**
 * Quantiles of spreads. That of the normal distribution is found by Newton's method on the
 * distribution function, which is a series near the middle and a continued fraction in the tails
 * (M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14).
 */
final class Quantiles {

  private static final double ROOT = Math.sqrt(2 * Math.PI);

  /** From here on the tail is a continued fraction. */
  private static final double TAIL = 4;

  private static final int FRACTIONS = 60;
  private static final int ROUNDS = 60;

  private Quantiles() {}

  static double of(Spread spread, double share, double stated) {
    if (spread instanceof Spread.Within within) {
      return between(stated - within.minus(), stated + within.plus(), share);
    }
    if (spread instanceof Spread.Uniform uniform) {
      return between(uniform.from(), uniform.to(), share);
    }
    if (spread instanceof Spread.Triangular triangle) {
      return triangular(triangle, share);
    }
    Spread.Normal normal = (Spread.Normal) spread;
    return normal.mean() + normal.deviation() * normal(share);
  }

  private static double between(double from, double to, double share) {
    return share < 0.5 ? from + share * (to - from) : to - (1 - share) * (to - from);
  }

  private static double triangular(Spread.Triangular of, double share) {
    double width = of.to() - of.from();
    double left = of.peak() - of.from();
    if (share * width <= left) {
      return of.from() + Math.sqrt(share * width * left);
    }
    return of.to() - Math.sqrt((1 - share) * width * (of.to() - of.peak()));
  }

  /** The standard normal quantile. */
  static double normal(double share) {
    if (share == 0 || share == 1) {
      return share == 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    // the shorter tail is the exact one
    boolean upper = share > 0.5;
    double tail = upper ? 1 - share : share;
    double z = start(tail);
    for (int round = 0; round < ROUNDS; round++) {
      double above = above(z);
      double density = Math.exp(-z * z / 2) / ROOT;
      // Newton's step on the logarithm, which is nearly a parabola in the tail
      double step = above * Math.log(above / tail) / density;
      z += step;
      if (!(Math.abs(step) > 1e-15 * Math.max(1, z))) {
        break;
      }
    }
    return upper ? z : -z;
  }

  private static double start(double tail) {
    return tail > 0.3 ? (0.5 - tail) * ROOT : Math.sqrt(Math.max(0, -2 * Math.log(2 * tail)));
  }

  /** Share above z, z not far below 0. */
  private static double above(double z) {
    double density = Math.exp(-z * z / 2) / ROOT;
    if (z < TAIL) {
      double term = z;
      double sum = z;
      for (int n = 3; Math.abs(term) > 1e-18 * Math.abs(sum) && n < 400; n += 2) {
        term *= z * z / n;
        sum += term;
      }
      return 0.5 - density * sum;
    }
    double fraction = z;
    for (int n = FRACTIONS; n > 0; n--) {
      fraction = z + n / fraction;
    }
    return density / fraction;
  }
}
