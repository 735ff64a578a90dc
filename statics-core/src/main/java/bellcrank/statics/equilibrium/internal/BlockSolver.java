package bellcrank.statics.equilibrium.internal;

import org.ejml.data.DMatrixRMaj;

/**
 * Solves the square part block after block. A single unknown is a division; a small block goes to a
 * dense LU factor with row exchanges, a large one to a sparse one. Factors are kept, so that
 * several right sides can be solved; all storage is reused when the numbers change.
 */
final class BlockSolver {

  /** Blocks above this size are factored sparsely. */
  static final int LARGEST_DENSE = 160;

  private final Order order;
  private final Equations equations;
  private final DenseBlock[] dense;
  private final SparseBlock[] sparse;

  BlockSolver(Order order, Equations equations) {
    this.order = order;
    this.equations = equations;
    boolean single = order.largestBlock <= 1;
    dense = new DenseBlock[single ? 0 : order.blocks];
    sparse = new SparseBlock[order.largestBlock > LARGEST_DENSE ? order.blocks : 0];
  }

  /**
   * Factors all blocks with the present numbers.
   *
   * @return false if a pivot is exactly zero, so that no right side can be solved
   */
  boolean factor() {
    Pattern p = order.pattern;
    double[] value = equations.value;
    for (int block = 0; block < order.blocks; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      if (size == 1) {
        if (diagonal(p, value, order.row[from], order.column[from]) == 0) {
          return false;
        }
      } else if (size <= LARGEST_DENSE) {
        DenseBlock factor = dense[block];
        if (factor == null) {
          factor = new DenseBlock(order, from, size);
          dense[block] = factor;
        }
        if (!factor.factor(p, value)) {
          return false;
        }
      } else {
        SparseBlock factor = sparse[block];
        if (factor == null) {
          factor = new SparseBlock(order, from, size);
          sparse[block] = factor;
        }
        if (!factor.factor(p, value)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Solves for the unknowns of the square part. Unknowns of the over-determined part must be in
   * {@code x} already.
   *
   * @param b right side by rows
   * @param x unknowns by columns; those of the square part are written
   */
  void solve(double[] b, double[] x) {
    Pattern p = order.pattern;
    double[] value = equations.value;
    for (int block = 0; block < order.blocks; block++) {
      int from = order.blockStart[block];
      int size = order.blockStart[block + 1] - from;
      if (size == 1) {
        int row = order.row[from];
        int column = order.column[from];
        double sum = b[row];
        double pivot = 0;
        for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
          int other = p.rowColumn[k];
          if (other == column) {
            pivot = value[p.rowEntry[k]];
          } else {
            sum -= value[p.rowEntry[k]] * x[other];
          }
        }
        x[column] = sum / pivot;
      } else if (size <= LARGEST_DENSE) {
        dense[block].solve(p, value, b, x);
      } else {
        sparse[block].solve(p, value, b, x);
      }
    }
  }

  private static double diagonal(Pattern p, double[] value, int row, int column) {
    for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
      if (p.rowColumn[k] == column) {
        return value[p.rowEntry[k]];
      }
    }
    return 0;
  }

  /**
   * Known part of a block's right side: b minus what unknowns outside the block contribute. Inside
   * the block x is zeroed first, so that one loop serves.
   */
  static void gather(
      Order order, int from, int size, double[] value, double[] b, double[] x, double[] out) {
    Pattern p = order.pattern;
    for (int i = 0; i < size; i++) {
      x[order.column[from + i]] = 0;
    }
    for (int i = 0; i < size; i++) {
      int row = order.row[from + i];
      double sum = b[row];
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        sum -= value[p.rowEntry[k]] * x[p.rowColumn[k]];
      }
      out[i] = sum;
    }
  }

  /** Makes a matrix that EJML may overwrite. */
  static DMatrixRMaj column(int size) {
    return new DMatrixRMaj(size, 1);
  }
}
