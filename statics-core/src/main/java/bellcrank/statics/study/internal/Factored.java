package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.NormOps_DDRM;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** Equations that are solved again and again: by exchange of rows, or else by singular values. */
abstract class Factored {

  /** Singular values below this share of the largest are zero. */
  static final double RANK_TOLERANCE = 1e-11;

  /** Least ratio of pivots at which singular values are not looked at. */
  private static final double REGULAR = 1e-9;

  /** Share of the rates above which a change of rank is no rounding. */
  private static final double KEPT = 1e-9;

  static Factored of(DMatrixRMaj a) {
    if (a.numRows == a.numCols && a.numRows > 0) {
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(a.numRows);
      if (solver.setA(a.copy()) && solver.quality() > REGULAR) {
        return new Regular(solver, a);
      }
    }
    return new Singular(a);
  }

  /** Equations of any rank, by singular values. */
  static Factored leastSquares(DMatrixRMaj a) {
    return new Singular(a);
  }

  abstract int rank();

  /** Changes of the solution that no equation sees. */
  abstract List<double[]> free();

  /** The solution; of several the least. */
  abstract DMatrixRMaj solve(DMatrixRMaj right);

  /** Size of what is left over of a right side, whatever the solution. */
  abstract double leftOver(DMatrixRMaj right);

  /** Whether the rank stays as it is when the coefficients change at some rates. */
  abstract boolean keepsRank(DMatrixRMaj rates);

  private static final class Regular extends Factored {

    private final LinearSolverDense<DMatrixRMaj> solver;
    private final DMatrixRMaj a;

    Regular(LinearSolverDense<DMatrixRMaj> solver, DMatrixRMaj a) {
      this.solver = solver;
      this.a = a;
    }

    @Override
    DMatrixRMaj solve(DMatrixRMaj right) {
      DMatrixRMaj x = new DMatrixRMaj(right.numRows, 1);
      solver.solve(right.copy(), x);
      // one round of refinement takes back what elimination rounds off
      DMatrixRMaj left = right.copy();
      CommonOps_DDRM.multAdd(-1, a, x, left);
      DMatrixRMaj more = new DMatrixRMaj(right.numRows, 1);
      solver.solve(left, more);
      CommonOps_DDRM.addEquals(x, more);
      return x;
    }

    @Override
    int rank() {
      return a.numCols;
    }

    @Override
    List<double[]> free() {
      return List.of();
    }

    @Override
    double leftOver(DMatrixRMaj right) {
      return 0;
    }

    @Override
    boolean keepsRank(DMatrixRMaj rates) {
      return true;
    }
  }

  private static final class Singular extends Factored {

    private final DMatrixRMaj u;
    private final DMatrixRMaj v;
    private final double[] values;
    private final int rank;

    Singular(DMatrixRMaj a) {
      SingularValueDecomposition_F64<DMatrixRMaj> found =
          DecompositionFactory_DDRM.svd(
              Math.max(1, a.numRows), Math.max(1, a.numCols), true, true, false);
      if (a.numRows == 0 || a.numCols == 0 || !found.decompose(a.copy())) {
        u = CommonOps_DDRM.identity(a.numRows);
        v = CommonOps_DDRM.identity(a.numCols);
        values = new double[0];
        rank = 0;
        return;
      }
      u = found.getU(null, false);
      v = found.getV(null, false);
      DMatrixRMaj w = found.getW(null);
      SingularOps_DDRM.descendingOrder(u, false, w, v, false);
      values = new double[Math.min(a.numRows, a.numCols)];
      int above = 0;
      for (int k = 0; k < values.length; k++) {
        values[k] = w.get(k, k);
        above += values[k] > RANK_TOLERANCE * values[0] ? 1 : 0;
      }
      rank = above;
    }

    @Override
    DMatrixRMaj solve(DMatrixRMaj right) {
      DMatrixRMaj x = new DMatrixRMaj(v.numRows, 1);
      for (int k = 0; k < rank; k++) {
        double share = dot(u, k, right) / values[k];
        for (int row = 0; row < v.numRows; row++) {
          x.add(row, 0, share * v.get(row, k));
        }
      }
      return x;
    }

    @Override
    int rank() {
      return rank;
    }

    @Override
    List<double[]> free() {
      List<double[]> all = new ArrayList<>();
      for (int k = rank; k < v.numCols; k++) {
        double[] one = new double[v.numRows];
        for (int row = 0; row < one.length; row++) {
          one[row] = v.get(row, k);
        }
        all.add(one);
      }
      return all;
    }

    private static double dot(DMatrixRMaj of, int column, DMatrixRMaj with) {
      double sum = 0;
      for (int row = 0; row < of.numRows; row++) {
        sum += of.get(row, column) * with.get(row, 0);
      }
      return sum;
    }

    @Override
    double leftOver(DMatrixRMaj right) {
      double sum = 0;
      for (int k = rank; k < u.numCols; k++) {
        double share = dot(u, k, right);
        sum += share * share;
      }
      return Math.sqrt(sum);
    }

    @Override
    boolean keepsRank(DMatrixRMaj rates) {
      if (rank == u.numCols || rank == v.numCols) {
        return true;
      }
      DMatrixRMaj left = CommonOps_DDRM.extract(u, 0, u.numRows, rank, u.numCols);
      DMatrixRMaj right = CommonOps_DDRM.extract(v, 0, v.numRows, rank, v.numCols);
      DMatrixRMaj product = new DMatrixRMaj(rates.numRows, right.numCols);
      CommonOps_DDRM.mult(rates, right, product);
      DMatrixRMaj opened = new DMatrixRMaj(left.numCols, right.numCols);
      CommonOps_DDRM.multTransA(left, product, opened);
      return NormOps_DDRM.normF(opened) <= KEPT * NormOps_DDRM.normF(rates);
    }
  }
}
