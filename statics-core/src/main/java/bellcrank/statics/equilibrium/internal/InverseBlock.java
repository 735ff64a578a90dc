package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.misc.UnrolledInverseFromMinor_DDRM;

/**
 * One small irreducible block by its inverse, which EJML writes out for up to five unknowns. For
 * many right sides that is several times as quick as a factor; it is as exact while the inverse is
 * not large, so a block with a large one is not solved at all.
 */
final class InverseBlock {

  /** Most unknowns of a block. */
  static final int MOST = UnrolledInverseFromMinor_DDRM.MAX;

  /** Entries of the inverse above this, with the largest coefficient of a row being 1. */
  private static final double LARGEST = 1e3;

  private final OrderedRows rows;
  private final int from;
  private final int size;
  private final DMatrixRMaj matrix;
  private final DMatrixRMaj inverse;
  private final double[] right;

  /** Which coefficients are of the block's own unknowns, and where they stand in its matrix. */
  private final int[] own;

  private final int[] place;

  /** The other coefficients, row by row. */
  private final int[] other;

  private final int[] otherStart;

  InverseBlock(OrderedRows rows, int from, int size) {
    this.rows = rows;
    this.from = from;
    this.size = size;
    matrix = new DMatrixRMaj(size, size);
    inverse = new DMatrixRMaj(size, size);
    right = new double[size];
    int count = rows.start[from + size] - rows.start[from];
    int[] owns = new int[count];
    int[] places = new int[count];
    int[] others = new int[count];
    otherStart = new int[size + 1];
    int used = 0;
    int left = 0;
    for (int i = 0; i < size; i++) {
      for (int k = rows.start[from + i]; k < rows.start[from + i + 1]; k++) {
        int j = rows.order.position[rows.column[k]] - from;
        if (j >= 0 && j < size) {
          owns[used] = k;
          places[used++] = i * size + j;
        } else {
          others[left++] = k;
        }
      }
      otherStart[i + 1] = left;
    }
    own = Arrays.copyOf(owns, used);
    place = Arrays.copyOf(places, used);
    other = Arrays.copyOf(others, left);
  }

  /** Inverts the present numbers; false if the inverse is large or there is none. */
  boolean factor() {
    for (int k = 0; k < own.length; k++) {
      matrix.data[place[k]] = rows.value[own[k]];
    }
    UnrolledInverseFromMinor_DDRM.inv(matrix, inverse);
    boolean small = true;
    for (int i = 0; i < size; i++) {
      double row = 0;
      double answer = 0;
      for (int j = 0; j < size; j++) {
        row = Math.max(row, Math.abs(matrix.data[i * size + j]));
        answer = Math.max(answer, Math.abs(inverse.data[j * size + i]));
      }
      // a NaN is not small either
      small &= row * answer <= LARGEST;
    }
    return small;
  }

  void solve(double[] b, double[] x) {
    for (int i = 0; i < size; i++) {
      double sum = b[rows.order.row[from + i]];
      for (int k = otherStart[i]; k < otherStart[i + 1]; k++) {
        sum -= rows.value[other[k]] * x[rows.column[other[k]]];
      }
      right[i] = sum;
    }
    for (int j = 0; j < size; j++) {
      double sum = 0;
      for (int i = 0; i < size; i++) {
        sum += inverse.data[j * size + i] * right[i];
      }
      x[rows.order.column[from + j]] = sum;
    }
  }
}
