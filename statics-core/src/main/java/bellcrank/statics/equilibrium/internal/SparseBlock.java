package bellcrank.statics.equilibrium.internal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.csc.decomposition.lu.LuUpLooking_DSCC;
import org.ejml.sparse.csc.linsol.lu.LinearSolverLu_DSCC;

/**
 * One large irreducible block in a sparse LU factor by EJML, without EJML's own fill ordering: the
 * block is ordered here (reverse Cuthill–McKee on the symmetric pattern of matched unknowns).
 */
final class SparseBlock {

  private final OrderedRows rows;
  private final int from;
  private final int size;
  private final int[] newOf;
  private final double[] gathered;
  private final DMatrixRMaj right;
  private final DMatrixRMaj solution;
  private LuUpLooking_DSCC factors = new LuUpLooking_DSCC(null);
  private LinearSolverLu_DSCC lu = new LinearSolverLu_DSCC(factors);

  SparseBlock(OrderedRows rows, int from, int size) {
    this.rows = rows;
    this.from = from;
    this.size = size;
    newOf = new CuthillMcKee(rows, from, size).newNumbers();
    gathered = new double[size];
    right = new DMatrixRMaj(size, 1);
    solution = new DMatrixRMaj(size, 1);
  }

  boolean factor() {
    DMatrixSparseTriplet triplets = new DMatrixSparseTriplet(size, size, 4 * size);
    for (int i = 0; i < size; i++) {
      for (int k = rows.start[from + i]; k < rows.start[from + i + 1]; k++) {
        int j = rows.order.position[rows.column[k]] - from;
        if (j >= 0 && j < size) {
          triplets.addItem(newOf[i], newOf[j], rows.value[k]);
        }
      }
    }
    DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
    factors = new LuUpLooking_DSCC(null);
    lu = new LinearSolverLu_DSCC(factors);
    return lu.setA(matrix);
  }

  /** Sign of the determinant of the numbers last factored; itself it may be out of all bounds. */
  double sense() {
    DMatrixSparseCSC u = factors.getU();
    double sign = 1;
    for (int j = 0; j < size; j++) {
      // the pivot is the last entry of its column
      sign *= Math.signum(u.nz_values[u.col_idx[j + 1] - 1]);
    }
    boolean[] seen = new boolean[size];
    for (int i = 0; i < size; i++) {
      int length = 0;
      for (int j = i; !seen[j]; j = factors.getPinv()[j]) {
        seen[j] = true;
        length++;
      }
      sign = length > 0 && length % 2 == 0 ? -sign : sign;
    }
    return sign;
  }

  void solve(double[] b, double[] x) {
    BlockSolver.gather(rows, from, size, b, x, gathered);
    for (int i = 0; i < size; i++) {
      right.data[newOf[i]] = gathered[i];
    }
    lu.solve(right, solution);
    for (int i = 0; i < size; i++) {
      x[rows.order.column[from + i]] = solution.data[newOf[i]];
    }
  }
}
