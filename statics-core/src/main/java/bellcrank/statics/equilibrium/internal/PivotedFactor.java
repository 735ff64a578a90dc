package bellcrank.statics.equilibrium.internal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.decomposition.qr.QRColPivDecompositionHouseholderColumn_DDRM;
import org.ejml.dense.row.decomposition.qr.QrHelperFunctions_DDRM;

/**
 * The factors A·P = Q·R of any matrix, by EJML's Householder reflections with exchange of columns.
 * Q is not written out: its reflections, as EJML keeps them, are applied to what it multiplies.
 */
final class PivotedFactor {

  private final int rows;
  private final int columns;
  private final QRColPivDecompositionHouseholderColumn_DDRM factor =
      new QRColPivDecompositionHouseholderColumn_DDRM();
  private final DMatrixRMaj r;
  private final int[] pivots;

  /**
   * Factors of a matrix.
   *
   * @param matrix the matrix; its storage is used again for R
   */
  PivotedFactor(DMatrixRMaj matrix) {
    rows = matrix.numRows;
    columns = matrix.numCols;
    if (!factor.decompose(matrix)) {
      throw new IllegalStateException("the factor of the equations was not found");
    }
    r = factor.getR(matrix, true);
    pivots = factor.getColPivots();
  }

  /** Which column of the matrix stands at a place of R. */
  int pivot(int place) {
    return pivots[place];
  }

  /** Entry of R, on or above its diagonal. */
  double r(int row, int place) {
    return r.unsafe_get(row, place);
  }

  /** Number of leading entries on the diagonal of R that are above a share of the first. */
  int rank(double share) {
    double bound = factor.getRank() == 0 ? 0 : Math.abs(r(0, 0)) * share;
    int rank = 0;
    while (rank < factor.getRank() && Math.abs(r(rank, rank)) > bound) {
      rank++;
    }
    return rank;
  }

  /** Qᵀ times a vector. */
  double[] turned(double[] vector) {
    double[] turned = vector.clone();
    DMatrixRMaj column = DMatrixRMaj.wrap(rows, 1, turned);
    double[][] reflections = factor.getQR();
    double[] gammas = factor.getGammas();
    double[] product = new double[1];
    for (int at = 0; at < factor.getRank(); at++) {
      QrHelperFunctions_DDRM.rank1UpdateMultR_u0(
          column, reflections[at], 1, gammas[at], 0, at, rows, product);
    }
    return turned;
  }

  /**
   * Solves the leading part of R, and puts each number where its column is in the matrix.
   *
   * @param rank size of the part
   * @param y right side, of that length at least; changed
   * @return one number for each column; 0 beyond the part
   */
  double[] solved(int rank, double[] y) {
    TriangularSolver_DDRM.solveU(r.data, y, columns, 0, rank);
    double[] x = new double[columns];
    for (int place = 0; place < rank; place++) {
      x[pivots[place]] = y[place];
    }
    return x;
  }
}
