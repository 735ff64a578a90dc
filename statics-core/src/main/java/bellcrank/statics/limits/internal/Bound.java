package bellcrank.statics.limits.internal;

/**
 * What a one-sided or rough part can give, as one linear condition on the forces: the sum of its
 * multiples of unknowns is at most a given number.
 */
public final class Bound {

  /** What happens where the condition is at its limit. */
  public enum Kind {
    /** A normal force is 0: the part lifts. */
    PUSH,
    /** A tension is 0: the part goes slack. */
    PULL,
    /** Friction is at μN: the part slides against it. */
    SLIDE,
    /** The normal force of a base is at its edge: it tips. */
    EDGE,
    /** The ratio of tensions round a post is at its limit: the rope slips. */
    WRAP,
    /** The ground under a base gives all it can: it sinks. */
    SINK,
    /** Friction in a pin is at its limit: it turns. */
    PIN,
    /** The couple on a screw is at its limit: it runs. */
    SCREW,
    /** Only splits a search into parts: nothing happens there. */
    PART
  }

  final int connection;
  final Kind kind;

  /** 1 or −1: which of two opposite conditions it is; the sign of the friction or couple there. */
  final int side;

  final int[] columns;
  final double[] multiples;

  /** Greatest value of the sum in N. */
  final double limit;

  /** Whether other conditions of the same part say it as well, while none is widened. */
  final boolean implied;

  Bound(int connection, Kind kind, int side, double limit, int[] columns, double... multiples) {
    this(connection, kind, side, limit, false, columns, multiples);
  }

  private Bound(
      int connection,
      Kind kind,
      int side,
      double limit,
      boolean implied,
      int[] columns,
      double[] multiples) {
    this.implied = implied;
    this.connection = connection;
    this.kind = kind;
    this.side = side;
    this.limit = limit;
    this.columns = columns;
    this.multiples = multiples;
  }

  /** A force of 0 or more. */
  static Bound notBelowZero(int connection, Kind kind, int column, boolean implied) {
    return new Bound(connection, kind, 1, 0, implied, new int[] {column}, new double[] {-1});
  }

  /** Whether it is the friction of a connection, or the slipping of a rope. */
  public boolean slidesAt(int index) {
    return connection == index && (kind == Kind.SLIDE || kind == Kind.WRAP);
  }

  /** The sum of multiples at given forces. */
  double sum(double[] forces) {
    double sum = 0;
    for (int k = 0; k < columns.length; k++) {
      sum += multiples[k] * forces[columns[k]];
    }
    return sum;
  }
}
