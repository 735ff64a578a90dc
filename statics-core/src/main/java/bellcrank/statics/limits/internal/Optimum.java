package bellcrank.statics.limits.internal;

/** How a linear program comes out. */
final class Optimum {

  /** The kinds of outcome. */
  enum Kind {
    /** There is a greatest value. */
    FOUND,
    /** No point fulfils all rows. */
    INFEASIBLE,
    /** The value grows without end. */
    UNBOUNDED,
    /** The library found no answer that bears substitution. */
    FAILED
  }

  private static final double[] NOWHERE = {};

  final Kind kind;
  final double value;

  /** Where the value is greatest; empty unless found. */
  final double[] x;

  private Optimum(Kind kind, double value, double[] x) {
    this.kind = kind;
    this.value = value;
    this.x = x;
  }

  static Optimum found(double value, double[] x) {
    return new Optimum(Kind.FOUND, value, x);
  }

  static Optimum infeasible() {
    return new Optimum(Kind.INFEASIBLE, Double.NEGATIVE_INFINITY, NOWHERE);
  }

  static Optimum unbounded() {
    return new Optimum(Kind.UNBOUNDED, Double.POSITIVE_INFINITY, NOWHERE);
  }

  static Optimum failed() {
    return new Optimum(Kind.FAILED, Double.NEGATIVE_INFINITY, NOWHERE);
  }

  boolean isFound() {
    return kind == Kind.FOUND;
  }
}
