package bellcrank.statics.equilibrium.internal;

import java.util.Optional;

/**
 * A small device with as many equations as unknowns, solved at one go, as by hand: equations with
 * one unknown left first, what then remains by elimination with row exchanges. The two probes of
 * the condition go along with the loads as further right sides. Looking for the order of {@link
 * Order} would take longer than the whole solution. What turns out singular, or nearly so, is left
 * to {@link LinearAnalysis}.
 */
final class SmallSystem {

  /** Most unknowns for which this is quicker than an order; sets of them fit in an int. */
  private static final int LARGEST = 12;

  /** Right sides: the loads and two probes, side by side for each equation and each unknown. */
  private static final int SIDES = 3;

  private static final double[] PROBES = probes();

  private final int n;

  /** Coefficients by rows, then the right sides by rows, then the answers by columns. */
  private final double[] a;

  private final int right;
  private final int answer;
  private final int[] columnsOfRow;

  /** Sets of equations and unknowns that are not used up, one bit for each. */
  private int openRows;

  private int openColumns;

  private SmallSystem(int n) {
    this.n = n;
    right = n * n;
    answer = right + SIDES * n;
    a = new double[answer + SIDES * n];
    columnsOfRow = new int[n];
    openRows = (1 << n) - 1;
    openColumns = openRows;
  }

  private static double[] probes() {
    double[] probes = new double[(SIDES - 1) * LARGEST];
    int bits = ConditionEstimate.SEED;
    for (int k = 0; k < probes.length; k++) {
      bits = ConditionEstimate.next(bits);
      probes[k] = ConditionEstimate.number(bits);
    }
    return probes;
  }

  static boolean fits(Assembly assembly) {
    return assembly.columns() == assembly.rows() && assembly.columns() <= LARGEST;
  }

  /**
   * Solves.
   *
   * @param assembly a device that {@link #fits}
   * @param actions with numbers
   * @param loads the given loads
   * @return empty if the equations may be singular
   */
  static Optional<LinearSolution> solve(Assembly assembly, Actions actions, Wrenches loads) {
    SmallSystem system = new SmallSystem(assembly.columns());
    system.fill(assembly, actions, loads);
    double zero = assembly.scale().zero();
    double squares = system.complete(zero);
    if (!system.oneByOne() || !system.eliminate(zero)) {
      return Optional.empty();
    }
    double condition = system.condition(squares);
    return condition < LinearAnalysis.SUSPICIOUS
        ? Optional.of(LinearSolution.regular(system.unknowns(), condition))
        : Optional.empty();
  }

  /** Moments are taken about the place of the first force on each member. */
  private void fill(Assembly assembly, Actions actions, Wrenches loads) {
    int members = assembly.memberCount();
    double[] centre = new double[2 * members];
    for (int action = actions.count() - 1; action >= 0; action--) {
      int body = actions.body[action];
      if (body >= 0 && body < members) {
        centre[2 * body] = actions.x(action);
        centre[2 * body + 1] = actions.y(action);
      }
    }
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int entry = assembly.firstRow(body) * n + actions.column[action];
        a[entry] += actions.fx(action);
        a[entry + n] += actions.fy(action);
        if (body < members) {
          a[entry + 2 * n] += actions.moment(action, centre[2 * body], centre[2 * body + 1]);
        }
      }
    }
    int k = right;
    for (int body = 0; body < loads.bodies(); body++) {
      a[k] = -loads.fx(body);
      a[k + SIDES] = -loads.fy(body);
      k += 2 * SIDES;
      if (body < members) {
        a[k] = -loads.momentAbout(body, centre);
        k += SIDES;
      }
    }
  }

  /**
   * Notes which coefficients are other than zero but for rounding, and adds the probes.
   *
   * @return sum of squares of the coefficients
   */
  private double complete(double zero) {
    double squares = 0;
    for (int row = 0; row < n; row++) {
      int columns = 0;
      for (int column = 0; column < n; column++) {
        double value = a[row * n + column];
        if (Math.abs(value) > zero) {
          columns |= 1 << column;
          squares += value * value;
        }
      }
      columnsOfRow[row] = columns;
      a[right + SIDES * row + 1] = PROBES[2 * row];
      a[right + SIDES * row + 2] = PROBES[2 * row + 1];
    }
    return squares;
  }

  /** Solves every equation that has one unknown left, as long as there is one. */
  private boolean oneByOne() {
    boolean again = true;
    while (again) {
      again = false;
      for (int rows = openRows; rows != 0; rows &= rows - 1) {
        int row = Integer.numberOfTrailingZeros(rows);
        int left = columnsOfRow[row] & openColumns;
        if (left == 0) {
          return false;
        }
        if ((left & left - 1) == 0) {
          int column = Integer.numberOfTrailingZeros(left);
          answer(row, columnsOfRow[row] & ~left, column);
          openRows &= ~(1 << row);
          openColumns &= ~left;
          again = true;
        }
      }
    }
    return true;
  }

  /** Solves a row for one unknown, all others of which are known. */
  private void answer(int row, int known, int column) {
    double first = a[right + SIDES * row];
    double second = a[right + SIDES * row + 1];
    double third = a[right + SIDES * row + 2];
    for (int columns = known; columns != 0; columns &= columns - 1) {
      int other = Integer.numberOfTrailingZeros(columns);
      double coefficient = a[row * n + other];
      first -= coefficient * a[answer + SIDES * other];
      second -= coefficient * a[answer + SIDES * other + 1];
      third -= coefficient * a[answer + SIDES * other + 2];
    }
    double pivot = a[row * n + column];
    a[answer + SIDES * column] = first / pivot;
    a[answer + SIDES * column + 1] = second / pivot;
    a[answer + SIDES * column + 2] = third / pivot;
  }

  /** Eliminates in the rows and columns that are left; false if a pivot is zero to rounding. */
  private boolean eliminate(double zero) {
    if (openColumns == 0) {
      return true;
    }
    int known = ~openColumns;
    int rest = openColumns;
    int[] rowOfColumn = new int[n];
    while (rest != 0) {
      int column = Integer.numberOfTrailingZeros(rest);
      int pivotRow = pivotRow(column, zero);
      if (pivotRow < 0) {
        return false;
      }
      rowOfColumn[column] = pivotRow;
      openRows &= ~(1 << pivotRow);
      rest &= rest - 1;
      for (int rows = openRows; rows != 0; rows &= rows - 1) {
        int row = Integer.numberOfTrailingZeros(rows);
        if ((columnsOfRow[row] >> column & 1) != 0) {
          subtract(row, pivotRow, column, rest, known);
        }
      }
    }
    while (openColumns != 0) {
      int column = 31 - Integer.numberOfLeadingZeros(openColumns);
      openColumns &= ~(1 << column);
      int row = rowOfColumn[column];
      answer(row, columnsOfRow[row] & (known | -2 << column), column);
    }
    return true;
  }

  private int pivotRow(int column, double zero) {
    int best = -1;
    double largest = zero;
    for (int rows = openRows; rows != 0; rows &= rows - 1) {
      int row = Integer.numberOfTrailingZeros(rows);
      double size = Math.abs(a[row * n + column]);
      if ((columnsOfRow[row] >> column & 1) != 0 && size > largest) {
        largest = size;
        best = row;
      }
    }
    return best;
  }

  /** Takes a multiple of the pivot's row from a row, so that the pivot's column vanishes in it. */
  private void subtract(int row, int pivotRow, int column, int rest, int known) {
    int to = row * n;
    int from = pivotRow * n;
    double factor = a[to + column] / a[from + column];
    int touched = columnsOfRow[pivotRow] & (rest | known);
    for (int columns = touched; columns != 0; columns &= columns - 1) {
      int k = Integer.numberOfTrailingZeros(columns);
      double own = (columnsOfRow[row] >> k & 1) != 0 ? a[to + k] : 0;
      a[to + k] = own - factor * a[from + k];
    }
    columnsOfRow[row] |= touched;
    for (int side = 0; side < SIDES; side++) {
      a[right + SIDES * row + side] -= factor * a[right + SIDES * pivotRow + side];
    }
  }

  private double condition(double squares) {
    double first = 0;
    double second = 0;
    for (int k = answer; k < a.length; k += SIDES) {
      first += a[k + 1] * a[k + 1];
      second += a[k + 2] * a[k + 2];
    }
    return ConditionEstimate.from(squares, Math.max(first, second), n);
  }

  private double[] unknowns() {
    double[] x = new double[n];
    for (int column = 0; column < n; column++) {
      x[column] = a[answer + SIDES * column];
    }
    return x;
  }
}
