package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Solves the equations of a device, whatever their rank. The square part is solved in blocks; the
 * over- and under-determined parts, if any, by singular values. Where a part turns out to have less
 * rank than its pattern promises, ranks of parts no longer add up, and the connected group of
 * equations round it is taken as a whole.
 */
final class LinearAnalysis {

  /** Estimated condition from which a square part is looked at by singular values. */
  static final double SUSPICIOUS = 1e10;

  /** More unknowns than this are not taken as a whole while each of their blocks is regular. */
  static final int LARGEST_WHOLE = 2000;

  /** Share of the loads that may be left over in equations that still count as fulfilled. */
  static final double BALANCE_TOLERANCE = 1e-9;

  private final Equations equations;
  private final double[] b;
  private final double loadScale;
  private final double zero;
  private final double[] x;
  private final boolean[] own;
  private final List<double[]> selfStresses = new ArrayList<>();
  private final List<double[]> motions = new ArrayList<>();
  private boolean balanced = true;
  private double condition = 1;

  private LinearAnalysis(Equations equations, double[] b, double loadScale, double zero) {
    this.equations = equations;
    this.b = b;
    this.loadScale = loadScale;
    this.zero = zero;
    x = new double[equations.columns];
    own = new boolean[equations.columns];
  }

  /**
   * Solves.
   *
   * @param equations with numbers
   * @param b right side
   * @param loadScale sum of the sizes of all loads in {@code b}
   * @param zero bound of structural zeros
   * @param columns only the unknowns below this number take part
   */
  static LinearSolution solve(
      Equations equations, double[] b, double loadScale, double zero, int columns) {
    Order order = Order.of(new Pattern(equations, zero, columns));
    LinearAnalysis analysis = new LinearAnalysis(equations, b, loadScale, zero);
    if (!analysis.inParts(order)) {
      analysis.inGroups(order);
    }
    return new LinearSolution(
        analysis.x,
        analysis.balanced,
        List.copyOf(analysis.selfStresses),
        List.copyOf(analysis.motions),
        analysis.condition);
  }

  private boolean inParts(Order order) {
    OrderedRows rows = new OrderedRows(order);
    rows.take(equations);
    BlockSolver solver = new BlockSolver(rows, zero);
    if (!solver.factor()) {
      return false;
    }
    condition = ConditionEstimate.of(rows, solver, new double[equations.rows], x);
    // singular values of a very large whole cannot be had; there each block's pivots decide alone
    boolean tooLarge = order.column.length > LARGEST_WHOLE;
    if (!(condition < SUSPICIOUS) && !(tooLarge && condition < Double.POSITIVE_INFINITY)) {
      return false;
    }
    if (order.isSquare()) {
      solver.solve(b, x);
      return true;
    }
    int[] scratch = RankPart.scratch(equations);
    RankPart over =
        new RankPart(
            equations, order.rowsOf(Order.OVER), order.columnsOf(Order.OVER), zero, scratch);
    RankPart under =
        new RankPart(
            equations, order.rowsOf(Order.UNDER), order.columnsOf(Order.UNDER), zero, scratch);
    if (over.rank < over.columns.length || under.rank < under.rows.length) {
      return false;
    }
    take(over, order);
    solver.solve(b, x);
    take(under, order);
    return true;
  }

  /** Solves connected groups of equations and unknowns as wholes. */
  private void inGroups(Order order) {
    condition = 1;
    java.util.Arrays.fill(x, 0);
    Groups groups = new Groups(order.pattern);
    int[] scratch = RankPart.scratch(equations);
    for (int group = 0; group < groups.count; group++) {
      take(
          new RankPart(equations, groups.rows(group), groups.columns(group), zero, scratch), order);
    }
  }

  private void take(RankPart part, Order order) {
    condition = Math.max(condition, part.condition);
    Pattern p = order.pattern;
    double[] right = new double[part.rows.length];
    for (int column : part.columns) {
      own[column] = true;
    }
    double known = loadScale;
    for (int i = 0; i < right.length; i++) {
      int row = part.rows[i];
      right[i] = b[row];
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        int column = p.rowColumn[k];
        if (!own[column]) {
          right[i] -= equations.value[p.rowEntry[k]] * x[column];
          known = Math.max(known, Math.abs(x[column]));
        }
      }
    }
    double[] solution = part.solve(right);
    for (int j = 0; j < solution.length; j++) {
      x[part.columns[j]] = solution[j];
      own[part.columns[j]] = false;
    }
    for (double[] vector : part.rightNull()) {
      selfStresses.add(spread(vector, part.columns, equations.columns));
    }
    for (double[] vector : part.leftNull()) {
      double power = 0;
      for (int i = 0; i < vector.length; i++) {
        power += vector[i] * right[i];
      }
      balanced &= Math.abs(power) <= BALANCE_TOLERANCE * known;
      motions.add(spread(vector, part.rows, equations.rows));
    }
  }

  private static double[] spread(double[] vector, int[] places, int length) {
    double[] all = new double[length];
    for (int i = 0; i < vector.length; i++) {
      all[places[i]] = vector[i];
    }
    return all;
  }
}
