package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.ejml.dense.row.linsol.lu.LinearSolverLu_DDRM;

/** One irreducible block in a dense LU factor by EJML; storage is reused. */
final class DenseBlock {

  private final OrderedRows rows;
  private final int from;
  private final int size;
  private final double zero;
  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj solution;
  private final LUDecompositionAlt_DDRM factors = new LUDecompositionAlt_DDRM();
  private final LinearSolverLu_DDRM solver = new LinearSolverLu_DDRM(factors);

  /**
   * A block.
   *
   * @param from where it starts in the order
   * @param size number of its unknowns
   * @param zero bound at or below which a pivot counts as zero
   */
  DenseBlock(OrderedRows rows, int from, int size, double zero) {
    this.rows = rows;
    this.from = from;
    this.size = size;
    this.zero = zero;
    matrix = new DMatrixRMaj(size, size);
    right = new DMatrixRMaj(size, 1);
    solution = new DMatrixRMaj(size, 1);
  }

  /** Factors the present numbers; false if a pivot is zero to rounding. */
  boolean factor() {
    double[] data = matrix.data;
    Arrays.fill(data, 0);
    for (int i = 0; i < size; i++) {
      for (int k = rows.start[from + i]; k < rows.start[from + i + 1]; k++) {
        int j = rows.order.position[rows.column[k]] - from;
        if (j >= 0 && j < size) {
          data[i * size + j] = rows.value[k];
        }
      }
    }
    return solver.setA(matrix) && pivotsAbove(factors, size, zero);
  }

  /** Whether all pivots are above a bound: EJML's own verdict takes singular matrices as well. */
  static boolean pivotsAbove(LUDecompositionAlt_DDRM factors, int size, double zero) {
    double[] lu = factors.getLU().data;
    for (int i = 0; i < size; i++) {
      if (!(Math.abs(lu[i * size + i]) > zero)) {
        return false;
      }
    }
    return true;
  }

  /** Determinant of the numbers last factored. */
  double determinant() {
    return factors.computeDeterminant().real;
  }

  void solve(double[] b, double[] x) {
    BlockSolver.gather(rows, from, size, b, x, right.data);
    solver.solve(right, solution);
    for (int i = 0; i < size; i++) {
      x[rows.order.column[from + i]] = solution.data[i];
    }
  }
}
