package bellcrank.statics.limits.internal;

/** How a search for the greatest value of a sum of forces comes out. Values are scaled back. */
public final class Extreme {

  /** The kinds of outcome. */
  public enum Kind {
    /** There is a greatest value. */
    FOUND,
    /** No state is possible. */
    NONE,
    /** The value grows without end. */
    UNBOUNDED,
    /** The search ended too early to tell. */
    OPEN
  }

  private static final double[] NOWHERE = {};

  private final Kind kind;
  private final double value;
  private final double gap;
  final double[] forces;
  private final double number;

  private Extreme(Kind kind, double value, double gap, double[] forces, double number) {
    this.kind = kind;
    this.value = value;
    this.gap = gap;
    this.forces = forces;
    this.number = number;
  }

  /**
   * A greatest value.
   *
   * @param value the value
   * @param gap by how much the true one may be larger
   * @param forces the forces there, by unknowns, in N
   * @param number the number by which the varied loads are multiplied there
   */
  public static Extreme found(double value, double gap, double[] forces, double number) {
    return new Extreme(Kind.FOUND, value, gap, forces, number);
  }

  /** A search that ended too early to tell. */
  public static Extreme open() {
    return without(Kind.OPEN);
  }

  static Extreme without(Kind kind) {
    return new Extreme(kind, 0, 0, NOWHERE, 0);
  }

  /** How it comes out. */
  public Kind kind() {
    return kind;
  }

  /** Whether there is a greatest value. */
  public boolean isFound() {
    return kind == Kind.FOUND;
  }

  /** The greatest value that was reached. */
  public double value() {
    return value;
  }

  /** By how much the true value may be larger; 0 if it is exact but for rounding. */
  public double gap() {
    return gap;
  }

  /** The number by which the varied loads are multiplied there. */
  public double number() {
    return number;
  }

  /** The forces there, by unknowns, in N. */
  public double[] forces() {
    return forces.clone();
  }
}
