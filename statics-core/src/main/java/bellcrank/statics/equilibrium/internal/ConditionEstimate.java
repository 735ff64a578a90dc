package bellcrank.statics.equilibrium.internal;

/**
 * Estimate of the condition number of the scaled square part: Frobenius norm of the matrix times
 * the largest answer to two fixed right sides of ±1. For random signs the mean square of that
 * answer is the squared Frobenius norm of the inverse, so the estimate is of its size, with four
 * solves less than a full inverse.
 */
final class ConditionEstimate {

  private static final int PROBES = 2;

  private ConditionEstimate() {}

  static double of(Order order, Equations e, BlockSolver solver) {
    return of(order, e, solver, new double[e.rows], new double[e.columns]);
  }

  static double of(Order order, Equations e, BlockSolver solver, double[] right, double[] x) {
    int n = order.column.length;
    if (n == 0) {
      return 1;
    }
    double norm = 0;
    Pattern p = order.pattern;
    for (int i = 0; i < n; i++) {
      int row = order.row[i];
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        if (order.columnPart[p.rowColumn[k]] == Order.SQUARE) {
          double value = e.value[p.rowEntry[k]];
          norm += value * value;
        }
      }
    }
    double largest = 0;
    int bits = 0x2545F491;
    for (int probe = 0; probe < PROBES; probe++) {
      java.util.Arrays.fill(x, 0);
      for (int i = 0; i < n; i++) {
        // xorshift: fixed, so that an answer never depends on chance
        bits ^= bits << 13;
        bits ^= bits >>> 17;
        bits ^= bits << 5;
        right[order.row[i]] = bits < 0 ? -1 : 1;
      }
      solver.solve(right, x);
      double sum = 0;
      for (int i = 0; i < n; i++) {
        double value = x[order.column[i]];
        sum += value * value;
      }
      largest = Math.max(largest, sum);
    }
    // a square matrix of n columns has a condition of n at least in this norm; n counts as 1
    return Math.max(1, Math.sqrt(norm * largest) / n);
  }
}
