package bellcrank.statics.motion.internal;

/**
 * Configurations between two places of a way, by cubics (Hermite) that have the places and the free
 * motions there, in terms of the way along the motion: so they serve up to a dead centre, where the
 * drive stands still.
 */
final class Between {

  private static final int MOST_ROUNDS = 8;

  /** Share of the interval that is near enough: the cubics themselves are no nearer. */
  private static final double NEAR = 1e-11;

  private Between() {}

  /**
   * Writes a configuration that nearly fits.
   *
   * @param a place at one end
   * @param b place at the other
   * @param drive value of the drive, between those of the places
   * @param configuration written
   */
  static void write(Node a, Node b, double drive, double[] configuration) {
    double length = length(a, b);
    double whole = b.drive - a.drive;
    double t = whole == 0 ? 0 : (drive - a.drive) / whole;
    if (whole != 0) {
      t = share(a, b, length, t);
    }
    double s = 1 - t;
    double fromA = s * s * (1 + 2 * t);
    double fromB = t * t * (3 - 2 * t);
    double alongA = length * t * s * s;
    double alongB = -length * t * t * s;
    for (int i = 0; i < configuration.length; i++) {
      configuration[i] =
          fromA * a.configuration[i]
              + fromB * b.configuration[i]
              + alongA * a.slope[i]
              + alongB * b.slope[i];
    }
  }

  /** Way from one to the other along the motion. */
  private static double length(Node a, Node b) {
    double along = 0;
    double squared = 0;
    for (int i = 0; i < a.slope.length; i++) {
      double mean = (a.slope[i] + b.slope[i]) / 2;
      along += mean * (b.configuration[i] - a.configuration[i]);
      squared += mean * mean;
    }
    return squared > 0 ? along / squared : 0;
  }

  /**
   * Where the cubic of the drive is at a share of its change; Newton's method, kept between the
   * ends.
   */
  private static double share(Node a, Node b, double length, double start) {
    double whole = b.drive - a.drive;
    double atA = length * a.rate / whole;
    double atB = length * b.rate / whole;
    double t = start;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double s = 1 - t;
      double miss = start - (t * t * (3 - 2 * t) + atA * t * s * s - atB * t * t * s);
      double slope = 6 * t * s + atA * s * (1 - 3 * t) + atB * t * (3 * t - 2);
      double step = slope > 0 ? miss / slope : 0;
      t = Math.max(0, Math.min(1, t + step));
      if (Math.abs(step) < NEAR) {
        break;
      }
    }
    return t;
  }
}
