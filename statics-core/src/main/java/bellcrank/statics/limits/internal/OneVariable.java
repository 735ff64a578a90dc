package bellcrank.statics.limits.internal;

/**
 * A program of one variable, as a device has whose equations fix all forces: each row cuts off one
 * side, so what is left is a stretch of numbers, and the answer is one of its ends.
 */
final class OneVariable {

  /** The least number that the rows allow, and the greatest. */
  private double least = Double.NEGATIVE_INFINITY;

  private double greatest = Double.POSITIVE_INFINITY;

  private OneVariable(Program program) {
    for (int k = 0; k < program.size(); k++) {
      atMost(program.row(k)[0], program.limit(k));
    }
    for (int k = 0; k < program.equalSize(); k++) {
      atMost(program.equalRow(k)[0], program.equalValue(k));
      atMost(-program.equalRow(k)[0], -program.equalValue(k));
    }
  }

  /** Rows are scaled, so a multiple is 1, −1 or 0. */
  private void atMost(double multiple, double limit) {
    if (multiple > 0) {
      greatest = Math.min(greatest, limit / multiple);
    } else if (multiple < 0) {
      least = Math.max(least, limit / multiple);
    } else if (limit < -Simplex.MISS) {
      // no number keeps it
      least = Double.POSITIVE_INFINITY;
    }
  }

  /**
   * Makes a multiple of the variable greatest.
   *
   * @param objective the multiple, not 0
   * @param accuracy by how much the ends may be in the wrong order through rounding
   * @return how it comes out
   */
  static Optimum maximize(Program program, double objective, double accuracy) {
    OneVariable left = new OneVariable(program);
    if (left.least == Double.POSITIVE_INFINITY
        || left.least - left.greatest > accuracy * (1 + Math.abs(left.greatest))) {
      return Optimum.infeasible();
    }
    double end = objective > 0 ? left.greatest : left.least;
    return Double.isInfinite(end)
        ? Optimum.unbounded()
        : Optimum.found(objective * end, new double[] {end});
  }
}
