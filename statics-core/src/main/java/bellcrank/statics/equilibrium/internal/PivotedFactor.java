package bellcrank.statics.equilibrium.internal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.qr.QRColPivDecompositionHouseholderColumn_DDRM;

/**
 * The factors A·P = Q·R of any matrix, by EJML's Householder reflections with exchange of columns.
 * Q and R are not written out: they are read where EJML keeps them. The storage serves for one
 * matrix after the other of the same size.
 */
final class PivotedFactor {

  private final QRColPivDecompositionHouseholderColumn_DDRM factor =
      new QRColPivDecompositionHouseholderColumn_DDRM();
  private final int rows;
  private final int columns;

  /** By columns in their new order: R on and above the diagonal, below it the reflections. */
  private double[][] kept = {};

  private int[] pivots = {};
  private double[] gammas = {};

  /** Number of reflections. */
  private int steps;

  /**
   * Factors of a matrix.
   *
   * @param matrix the matrix; it stays
   */
  PivotedFactor(DMatrixRMaj matrix) {
    rows = matrix.numRows;
    columns = matrix.numCols;
    take(matrix);
  }

  /**
   * Factors of another matrix in place of those of the last one.
   *
   * @param matrix a matrix of the same size; it stays
   */
  void take(DMatrixRMaj matrix) {
    if (rows == 0 || columns == 0) {
      return;
    }
    if (!factor.decompose(matrix)) {
      throw new IllegalStateException("the factor of the equations was not found");
    }
    kept = factor.getQR();
    pivots = factor.getColPivots();
    gammas = factor.getGammas();
    // of a matrix of zeros EJML tells the rank of the one before
    steps = r(0, 0) == 0 ? 0 : factor.getRank();
  }

  /** Which column of the matrix stands at a place of R. */
  int pivot(int place) {
    return pivots[place];
  }

  /** Entry of R, on or above its diagonal. */
  double r(int row, int place) {
    return kept[place][row];
  }

  /** Number of leading entries on the diagonal of R that are above a share of the first. */
  int rank(double share) {
    double bound = steps == 0 ? 0 : Math.abs(r(0, 0)) * share;
    int rank = 0;
    while (rank < steps && Math.abs(r(rank, rank)) > bound) {
      rank++;
    }
    return rank;
  }

  /** Qᵀ times a vector. */
  double[] turned(double[] vector) {
    double[] turned = vector.clone();
    turn(turned);
    return turned;
  }

  /** Puts Qᵀ times a vector in its place. */
  void turn(double[] vector) {
    for (int at = 0; at < steps; at++) {
      reflect(at, vector);
    }
  }

  /** A column of Q: those beyond the rank are square to all columns of the matrix. */
  double[] q(int column) {
    double[] vector = new double[rows];
    vector[column] = 1;
    for (int at = steps - 1; at >= 0; at--) {
      reflect(at, vector);
    }
    return vector;
  }

  private void reflect(int at, double[] vector) {
    double[] reflection = kept[at];
    double along = vector[at];
    for (int row = at + 1; row < rows; row++) {
      along += reflection[row] * vector[row];
    }
    along *= gammas[at];
    vector[at] -= along;
    for (int row = at + 1; row < rows; row++) {
      vector[row] -= reflection[row] * along;
    }
  }

  /**
   * Solves the leading part of R, and puts each number where its column is in the matrix.
   *
   * @param rank size of the part
   * @param y right side, of that length at least; changed
   * @return one number for each column; 0 beyond the part
   */
  double[] solved(int rank, double[] y) {
    double[] x = new double[columns];
    solve(rank, y, x);
    return x;
  }

  /** The same, the numbers being written into {@code x}. */
  void solve(int rank, double[] y, double[] x) {
    for (int place = rank - 1; place >= 0; place--) {
      double[] above = kept[place];
      double number = y[place] / above[place];
      x[pivots[place]] = number;
      for (int row = 0; row < place; row++) {
        y[row] -= above[row] * number;
      }
    }
    for (int place = rank; place < columns; place++) {
      x[pivots[place]] = 0;
    }
  }
}
