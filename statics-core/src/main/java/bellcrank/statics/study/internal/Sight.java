package bellcrank.statics.study.internal;

/**
 * What is seen at one place of a box: the value that shall be least, and for each goal by how much
 * it is missed (above zero) or has room (below). A goal that asks for one value tells how far it is
 * above it. Where a number is lacking nothing is seen.
 */
public final class Sight {

  /** What stands for a number that has no end; it does not count when sizes are read. */
  public static final double ENDLESS = 1e9;

  private static final Sight NOTHING = new Sight(Double.NaN, new double[0]);

  private final double value;
  private final double[] misses;

  private Sight(double value, double[] misses) {
    this.value = value;
    this.misses = misses;
  }

  /** Where some number is lacking. */
  public static Sight nothing() {
    return NOTHING;
  }

  /** What is seen; nothing if a number is not finite. */
  public static Sight of(double value, double... misses) {
    if (!Double.isFinite(value)) {
      return NOTHING;
    }
    for (double miss : misses) {
      if (!Double.isFinite(miss)) {
        return NOTHING;
      }
    }
    return new Sight(value, misses.clone());
  }

  /** Whether all numbers are there. */
  public boolean isThere() {
    return this != NOTHING;
  }

  /** The value that shall be least; only where something is seen. */
  public double value() {
    return value;
  }

  /** By how much a goal is missed, below zero if it has room; only where something is seen. */
  public double miss(int goal) {
    return misses[goal];
  }
}
