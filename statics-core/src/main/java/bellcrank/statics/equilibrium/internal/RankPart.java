package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * Rank and null spaces of some of the equations and unknowns, from singular values. The
 * coefficients are scaled to order one, so singular values may be compared with the largest one.
 */
final class RankPart {

  /** Singular values below this share of the largest count as zero. */
  static final double RANK_TOLERANCE = 1e-11;

  final int[] rows;
  final int[] columns;
  final int rank;

  /** Largest over smallest singular value that counts. */
  final double condition;

  private final DMatrixRMaj u;
  private final DMatrixRMaj v;
  private final double[] singular;
  private final int[] sorted;

  /** Storage for making parts one after another. */
  static int[] scratch(Equations e) {
    int[] place = new int[e.rows];
    java.util.Arrays.fill(place, -1);
    return place;
  }

  /**
   * A part.
   *
   * @param place from {@link #scratch}, left as it was
   */
  RankPart(Equations e, int[] rows, int[] columns, double zero, int[] place) {
    this(gathered(e, rows, columns, place), rows, columns, zero);
  }

  /**
   * A part.
   *
   * @param a its coefficients; at least one row and column; may be overwritten
   */
  RankPart(DMatrixRMaj a, int[] rows, int[] columns, double zero) {
    this.rows = rows;
    this.columns = columns;
    int m = rows.length;
    int n = columns.length;
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(a.numRows, a.numCols, true, true, false);
    if (!svd.decompose(a)) {
      throw new IllegalStateException("singular values did not converge");
    }
    u = svd.getU(new DMatrixRMaj(1, 1), false);
    v = svd.getV(new DMatrixRMaj(1, 1), false);
    int values = Math.min(a.numRows, a.numCols);
    singular = new double[values];
    Integer[] by = new Integer[values];
    DMatrixRMaj w = svd.getW(new DMatrixRMaj(1, 1));
    for (int k = 0; k < values; k++) {
      singular[k] = Math.abs(w.get(k, k));
      by[k] = k;
    }
    java.util.Arrays.sort(by, (p, q) -> Double.compare(singular[q], singular[p]));
    sorted = new int[values];
    for (int k = 0; k < values; k++) {
      sorted[k] = by[k];
    }
    double largest = values == 0 ? 0 : singular[sorted[0]];
    double bound = largest * Math.max(RANK_TOLERANCE, 4 * zero);
    int r = 0;
    while (r < values && singular[sorted[r]] > bound) {
      r++;
    }
    rank = m == 0 || n == 0 ? 0 : r;
    condition = rank == 0 ? 1 : largest / singular[sorted[rank - 1]];
  }

  private static DMatrixRMaj gathered(Equations e, int[] rows, int[] columns, int[] place) {
    int m = rows.length;
    int n = columns.length;
    for (int i = 0; i < m; i++) {
      place[rows[i]] = i;
    }
    DMatrixRMaj a = new DMatrixRMaj(Math.max(m, 1), Math.max(n, 1));
    for (int j = 0; j < n; j++) {
      for (int k = e.start[columns[j]]; k < e.start[columns[j] + 1]; k++) {
        int i = place[e.row[k]];
        if (i >= 0) {
          a.set(i, j, e.value[k]);
        }
      }
    }
    for (int row : rows) {
      place[row] = -1;
    }
    return a;
  }

  /** Least solution of the part for a right side given by this part's rows. */
  double[] solve(double[] b) {
    double[] x = new double[columns.length];
    for (int k = 0; k < rank; k++) {
      int s = sorted[k];
      double sum = 0;
      for (int i = 0; i < rows.length; i++) {
        sum += u.get(i, s) * b[i];
      }
      sum /= singular[s];
      for (int j = 0; j < columns.length; j++) {
        x[j] += v.get(j, s) * sum;
      }
    }
    return x;
  }

  /** Orthonormal vectors over this part's columns that the equations do not see. */
  List<double[]> rightNull() {
    return nullVectors(v, columns.length);
  }

  /** Orthonormal vectors over this part's rows to which all columns are square. */
  List<double[]> leftNull() {
    return nullVectors(u, rows.length);
  }

  private List<double[]> nullVectors(DMatrixRMaj basis, int length) {
    List<double[]> vectors = new ArrayList<>();
    boolean[] used = new boolean[Math.max(length, 1)];
    for (int k = 0; k < rank; k++) {
      used[sorted[k]] = true;
    }
    for (int k = 0; k < length; k++) {
      if (!used[k]) {
        double[] vector = new double[length];
        for (int i = 0; i < length; i++) {
          vector[i] = basis.get(i, k);
        }
        vectors.add(vector);
      }
    }
    return vectors;
  }
}
