package bellcrank.statics.limits.internal;

/** Loads of a program: fixed ones, and others times a number that may vary between two ends. */
public final class Travel {

  private static final double[] NONE = {};

  final double[] fixed;
  final double[] varied;
  final double least;
  final double greatest;

  private Travel(double[] fixed, double[] varied, double least, double greatest) {
    this.fixed = fixed;
    this.varied = varied;
    this.least = least;
    this.greatest = greatest;
  }

  /** Loads that do not vary. */
  public static Travel fixed(double[] loads) {
    return new Travel(loads, NONE, 0, 0);
  }

  /** Fixed loads and varied ones. */
  public static Travel of(double[] fixed, double[] varied, double least, double greatest) {
    return new Travel(fixed, varied, least, greatest);
  }

  /** Right side of the loads that do not vary, by equations; not copied. */
  public double[] fixed() {
    return fixed;
  }

  /** Right side of the loads that are multiplied, by equations; not copied. */
  public double[] varied() {
    return varied;
  }

  /** Least number. */
  public double least() {
    return least;
  }

  /** Greatest number. */
  public double greatest() {
    return greatest;
  }

  boolean varies() {
    return varied.length > 0;
  }

  /** Whether what varies is nothing, so that its number does not matter. */
  public boolean isOfNothing() {
    for (double load : varied) {
      if (load != 0) {
        return false;
      }
    }
    return !isBounded();
  }

  /** Whether the number lies between finite ends. */
  public boolean isBounded() {
    return varies() && greatest - least < Double.POSITIVE_INFINITY;
  }

  /** Distance of the ends. */
  public double length() {
    return greatest - least;
  }
}
