package bellcrank.benchmarks;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/** A dense LU solve by commons-math. */
public final class CommonsSolver implements DenseSolver {

  private final double[][] matrix;
  private final double[] right;

  private CommonsSolver(int unknowns) {
    matrix = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /**
   * LU with row exchanges.
   *
   * @param unknowns number of unknowns
   * @return the solver
   */
  public static CommonsSolver lu(int unknowns) {
    return new CommonsSolver(unknowns);
  }

  @Override
  public void clear() {
    for (double[] row : matrix) {
      Arrays.fill(row, 0);
    }
    Arrays.fill(right, 0);
  }

  @Override
  public void add(int row, int column, double value) {
    matrix[row][column] += value;
  }

  @Override
  public void addRight(int row, double value) {
    right[row] += value;
  }

  @Override
  public double[] solve() {
    LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(matrix, false));
    if (!lu.getSolver().isNonSingular()) {
      throw new IllegalStateException("singular equations");
    }
    return lu.getSolver().solve(new ArrayRealVector(right, false)).toArray();
  }
}
