package bellcrank.benchmarks;

/** A square dense system of equations in another library, used again and again. */
public interface DenseSolver {

  /** Sets all coefficients and the right side to zero. */
  void clear();

  /**
   * Adds to a coefficient.
   *
   * @param row number of the equation
   * @param column number of the unknown
   * @param value what is added
   */
  void add(int row, int column, double value);

  /**
   * Adds to the right side.
   *
   * @param row number of the equation
   * @param value what is added
   */
  void addRight(int row, double value);

  /**
   * Solves.
   *
   * @return the unknowns; overwritten by the next solve
   * @throws IllegalStateException if the solver says that it cannot
   */
  double[] solve();
}
