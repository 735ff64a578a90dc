package bellcrank.statics.geometry;

/** The one check that keeps NaN and infinities out of geometry. */
final class Finite {

  private Finite() {}

  static double check(String field, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(field + ": expected a finite number, got " + value);
    }
    return value + 0.0; // turns -0.0 into 0.0, so that equal points are equal
  }
}
