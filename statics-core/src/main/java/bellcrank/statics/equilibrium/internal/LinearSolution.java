package bellcrank.statics.equilibrium.internal;

import java.util.List;

/** What the equations say; not changed after construction. */
final class LinearSolution {

  private final double[] x;
  private final boolean balanced;
  private final List<double[]> selfStresses;
  private final List<double[]> motions;
  private final double condition;

  LinearSolution(
      double[] x,
      boolean balanced,
      List<double[]> selfStresses,
      List<double[]> motions,
      double condition) {
    this.x = x;
    this.balanced = balanced;
    this.selfStresses = selfStresses;
    this.motions = motions;
    this.condition = condition;
  }

  /** Exactly one solution. */
  static LinearSolution regular(double[] x, double condition) {
    return new LinearSolution(x, true, List.of(), List.of(), condition);
  }

  /** Unknowns by columns; where not determined, the least solution. */
  double[] x() {
    return x;
  }

  /** Whether the equations can hold at all. */
  boolean balanced() {
    return balanced;
  }

  /** Orthonormal right null vectors over all columns: force changes that statics does not see. */
  List<double[]> selfStresses() {
    return selfStresses;
  }

  /** Orthonormal left null vectors over all rows: motions that the forces do not hold. */
  List<double[]> motions() {
    return motions;
  }

  /** Estimate of the condition number of the scaled equations. */
  double condition() {
    return condition;
  }
}
