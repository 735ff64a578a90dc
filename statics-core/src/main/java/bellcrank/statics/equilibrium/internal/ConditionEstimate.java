package bellcrank.statics.equilibrium.internal;

/**
 * Estimate of the condition number of the scaled square part: Frobenius norm of the matrix times
 * the largest answer to a few fixed right sides. For random right sides of unit variance the mean
 * square of that answer is the squared Frobenius norm of the inverse, so the estimate is of its
 * size, without a full inverse. The numbers are of all sizes: equal ones could cancel in the simple
 * motions that singular devices have, and hide them. One right side may happen to lie nearly square
 * to the direction that matters; with several that is out of the question.
 */
final class ConditionEstimate {

  /** Number of right sides. */
  static final int PROBES = 6;

  /** First bits of the right sides. */
  static final int SEED = 0x2545F491;

  private ConditionEstimate() {}

  static double of(OrderedRows rows, BlockSolver solver, double[] right, double[] x) {
    Order order = rows.order;
    int n = order.column.length;
    if (n == 0) {
      return 1;
    }
    double norm = 0;
    for (int k = 0; k < rows.value.length; k++) {
      if (order.position[rows.column[k]] >= 0) {
        norm += rows.value[k] * rows.value[k];
      }
    }
    double largest = 0;
    int bits = SEED;
    for (int probe = 0; probe < PROBES; probe++) {
      java.util.Arrays.fill(x, 0);
      for (int i = 0; i < n; i++) {
        bits = next(bits);
        right[order.row[i]] = number(bits);
      }
      solver.solve(right, x);
      double sum = 0;
      for (int i = 0; i < n; i++) {
        double value = x[order.column[i]];
        sum += value * value;
      }
      largest = Math.max(largest, sum);
    }
    return from(norm, largest, n);
  }

  /** Next bits (xorshift): fixed, so that an answer never depends on chance. */
  static int next(int bits) {
    int b = bits ^ bits << 13;
    b ^= b >>> 17;
    return b ^ b << 5;
  }

  /** Number of a right side: evenly spread about zero, of unit variance. */
  static double number(int bits) {
    return Math.sqrt(3) * bits / (1L << 31);
  }

  /**
   * The estimate.
   *
   * @param squares sum of the squares of the coefficients
   * @param largest largest sum of squares of the answers to a probe
   * @param n number of unknowns
   */
  static double from(double squares, double largest, int n) {
    // a square matrix of n columns has a condition of n at least in this norm; n counts as 1
    return Math.max(1, Math.sqrt(squares * largest) / n);
  }
}
