package bellcrank.statics.equilibrium.internal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** One irreducible block in a dense LU factor by EJML; storage is reused. */
final class DenseBlock {

  private final Order order;
  private final int from;
  private final int size;
  private final int[] source;
  private final int[] target;
  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj solution;
  private final LinearSolverDense<DMatrixRMaj> lu;

  DenseBlock(Order order, int from, int size) {
    this.order = order;
    this.from = from;
    this.size = size;
    Pattern p = order.pattern;
    int[] place = new int[p.columns];
    java.util.Arrays.fill(place, -1);
    int count = 0;
    for (int i = 0; i < size; i++) {
      place[order.column[from + i]] = i;
      count += p.rowStart[order.row[from + i] + 1] - p.rowStart[order.row[from + i]];
    }
    int[] sources = new int[count];
    int[] targets = new int[count];
    int used = 0;
    for (int i = 0; i < size; i++) {
      int row = order.row[from + i];
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        int j = place[p.rowColumn[k]];
        if (j >= 0) {
          sources[used] = p.rowEntry[k];
          targets[used++] = i * size + j;
        }
      }
    }
    source = java.util.Arrays.copyOf(sources, used);
    target = java.util.Arrays.copyOf(targets, used);
    matrix = new DMatrixRMaj(size, size);
    right = new DMatrixRMaj(size, 1);
    solution = new DMatrixRMaj(size, 1);
    lu = LinearSolverFactory_DDRM.lu(size);
  }

  boolean factor(Pattern p, double[] value) {
    double[] data = matrix.data;
    java.util.Arrays.fill(data, 0);
    for (int k = 0; k < source.length; k++) {
      data[target[k]] = value[source[k]];
    }
    // EJML says true for singular matrices; its quality is a product of pivots, zero only if one is
    return lu.setA(matrix) && lu.quality() != 0;
  }

  void solve(Pattern p, double[] value, double[] b, double[] x) {
    BlockSolver.gather(order, from, size, value, b, x, right.data);
    lu.solve(right, solution);
    for (int i = 0; i < size; i++) {
      x[order.column[from + i]] = solution.data[i];
    }
  }
}
