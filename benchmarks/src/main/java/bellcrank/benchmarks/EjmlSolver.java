package bellcrank.benchmarks;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** A dense solve by EJML; matrices and solver are used again. */
public final class EjmlSolver implements DenseSolver {

  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj solution;
  private final LinearSolverDense<DMatrixRMaj> solver;

  private EjmlSolver(int unknowns, LinearSolverDense<DMatrixRMaj> solver) {
    this.solver = solver;
    matrix = new DMatrixRMaj(unknowns, unknowns);
    right = new DMatrixRMaj(unknowns, 1);
    solution = new DMatrixRMaj(unknowns, 1);
  }

  /**
   * LU with row exchanges.
   *
   * @param unknowns number of unknowns
   * @return the solver
   */
  public static EjmlSolver lu(int unknowns) {
    return new EjmlSolver(unknowns, LinearSolverFactory_DDRM.lu(unknowns));
  }

  /**
   * Householder QR.
   *
   * @param unknowns number of unknowns
   * @return the solver
   */
  public static EjmlSolver qr(int unknowns) {
    return new EjmlSolver(unknowns, LinearSolverFactory_DDRM.qr(unknowns, unknowns));
  }

  @Override
  public void clear() {
    matrix.zero();
    right.zero();
  }

  @Override
  public void add(int row, int column, double value) {
    matrix.add(row, column, value);
  }

  @Override
  public void addRight(int row, double value) {
    right.add(row, 0, value);
  }

  @Override
  public double[] solve() {
    if (!solver.setA(matrix)) {
      throw new IllegalStateException("singular equations");
    }
    solver.solve(right, solution);
    return solution.data;
  }
}
