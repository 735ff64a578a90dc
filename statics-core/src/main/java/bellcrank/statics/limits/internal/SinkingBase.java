package bellcrank.statics.limits.internal;

import java.util.List;

/**
 * A base that may sink: its normal force N is at most the ground's pressure on the effective width,
 * N ≤ q·L·(B − 2|M|/N). With R = q·L·B this is 2|M|·R/B ≤ N·(R − N): a convex condition, cut out by
 * tangents.
 */
final class SinkingBase {

  private final int connection;
  private final int normal;
  private final int couple;
  private final double half;
  private final double all;

  /**
   * A base.
   *
   * @param half half its width, scaled
   * @param all R: what the ground gives on the whole width, in N
   */
  SinkingBase(int connection, int normal, int couple, double half, double all) {
    this.connection = connection;
    this.normal = normal;
    this.couple = couple;
    this.half = half;
    this.all = all;
  }

  /** Conditions that hold for every state: the tangents at the full force. */
  Bound[] first() {
    return tangents(all);
  }

  /**
   * Conditions that cut a state off, if it breaks the true one.
   *
   * @param forces the state
   * @param slack force that does not matter
   * @return none, or two
   */
  Bound[] cuts(double[] forces, double slack) {
    double n = forces[normal];
    double miss = Math.abs(forces[couple]) / half - n * (1 - n / all);
    return miss > slack ? tangents(n) : new Bound[0];
  }

  /** The condition, if a state is at it. */
  List<Bound> atLimit(double[] forces, double slack) {
    double n = forces[normal];
    double miss = Math.abs(forces[couple]) / half - n * (1 - n / all);
    if (n <= slack || miss < -slack) {
      return List.of();
    }
    return List.of(tangents(n)[forces[couple] < 0 ? 1 : 0]);
  }

  /** |M|/half ≤ N − N²/R, with N² ≥ 2·N₀·N − N₀². */
  private Bound[] tangents(double at) {
    int[] columns = {normal, couple};
    double slope = 2 * at / all - 1;
    double limit = at * at / all;
    return new Bound[] {
      new Bound(connection, Bound.Kind.SINK, 1, limit, columns, slope, 1 / half),
      new Bound(connection, Bound.Kind.SINK, -1, limit, columns, slope, -1 / half)
    };
  }
}
