package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.ejml.dense.row.linsol.lu.LinearSolverLu_DDRM;

/**
 * The held motion rows of a device and a further one, where they are as many as the velocities, in
 * a dense LU factor by EJML; storage is reused. Many times quicker than singular values, but it
 * serves only where no motion is nearly free: there it says so, and singular values must decide.
 */
final class SquareRows {

  /** Pivot at or below which the rows may be dependent. */
  static final double NEARLY_FREE = 1e-6;

  private final Assembly assembly;
  private final int size;

  /** Row of each unknown; −1 if it is not held. */
  private final int[] rowOfColumn;

  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj solution;
  private final LUDecompositionAlt_DDRM factors = new LUDecompositionAlt_DDRM();
  private final LinearSolverLu_DDRM solver = new LinearSolverLu_DDRM(factors);

  private SquareRows(Assembly assembly, boolean[] held, int size) {
    this.assembly = assembly;
    this.size = size;
    rowOfColumn = new int[assembly.columns()];
    Arrays.fill(rowOfColumn, -1);
    int row = 0;
    for (int column = 0; column < held.length; column++) {
      rowOfColumn[column] = held[column] ? row++ : -1;
    }
    matrix = new DMatrixRMaj(size, size);
    right = new DMatrixRMaj(size, 1);
    solution = new DMatrixRMaj(size, 1);
  }

  /** Rows of a device's held unknowns and a further one. */
  static SquareRows of(Assembly assembly, boolean[] held) {
    return new SquareRows(assembly, held, assembly.rows());
  }

  /** Whether the held rows and a further one are as many as the velocities. */
  static boolean fits(Assembly assembly, boolean[] held) {
    int count = 1;
    for (boolean one : held) {
      count += one ? 1 : 0;
    }
    return count == assembly.rows();
  }

  /**
   * Solves.
   *
   * @param actions with numbers
   * @param gaps of all unknowns, which the motion shall close
   * @param more the further row, by velocities
   * @param miss what the motion shall do along it
   * @return velocities; empty if the rows may be dependent
   */
  double[] solve(Actions actions, double[] gaps, double[] more, double miss) {
    double[] data = matrix.data;
    Arrays.fill(data, 0);
    for (int action = 0; action < actions.count(); action++) {
      int row = rowOfColumn[actions.column[action]];
      int body = actions.body[action];
      if (row >= 0 && body >= 0) {
        int entry = row * size + assembly.firstRow(body);
        data[entry] += actions.motionX(action);
        data[entry + 1] += actions.motionY(action);
        if (body < assembly.memberCount()) {
          data[entry + 2] += actions.motionMoment(action, 0, 0);
        }
      }
    }
    System.arraycopy(more, 0, data, (size - 1) * size, size);
    for (int column = 0; column < rowOfColumn.length; column++) {
      if (rowOfColumn[column] >= 0) {
        right.data[rowOfColumn[column]] = -gaps[column];
      }
    }
    right.data[size - 1] = miss;
    if (!solver.setA(matrix) || !DenseBlock.pivotsAbove(factors, size, NEARLY_FREE)) {
      return new double[0];
    }
    solver.solve(right, solution);
    return solution.data.clone();
  }
}
