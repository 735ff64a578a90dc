package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;
import java.util.Optional;

/**
 * Free forces of a small device, found by elimination: one equation after another is solved for the
 * force with the largest coefficient, which is put into all others. What is not solved for is free.
 * Forces act on two bodies at most, or on a few, so nearly all coefficients are zeros; passing over
 * them takes a fraction of the time of a dense factor. It looks at one equation at a time, so it
 * chooses less carefully than one; where a pivot is small for its equation, or a free force enters
 * another one many times, it declines.
 */
final class SmallChoice implements ForceChoice {

  /** Most equations and most unknowns: sets of them fit in a long. */
  static final int MOST = 64;

  /** Share of the largest coefficient that an equation had at first, below which none is left. */
  private static final double FIRM = 1e-2;

  private final int rows;
  private final int columns;
  private final double[] centre;

  /**
   * Coefficients by rows; where one was eliminated, the multiple of the pivot's row that was taken
   * away.
   */
  private final double[] a;

  /** Sets of unknowns and of equations whose coefficients are not zero. */
  private final long[] columnsOfRow;

  private final long[] rowsOfColumn;

  /** Largest coefficient of each equation at first. */
  private final double[] size;

  /** For each step: the equation that was solved, for what, and which others it was put into. */
  private final int[] row;

  private final int[] column;
  private final long[] others;

  private long openRows;
  private long openColumns;

  private SmallChoice(Assembly assembly) {
    rows = assembly.rows();
    columns = assembly.columns();
    centre = new double[2 * assembly.memberCount()];
    a = new double[rows * columns];
    columnsOfRow = new long[rows];
    rowsOfColumn = new long[columns];
    size = new double[rows];
    row = new int[rows];
    column = new int[rows];
    others = new long[rows];
    openRows = set(rows);
    openColumns = set(columns);
  }

  private static long set(int count) {
    return count == 0 ? 0 : -1L >>> (MOST - count);
  }

  /**
   * Chooses.
   *
   * @param actions with numbers
   * @return empty if the device is too large, or its equations may depend on one another, or
   *     another choice would be much better
   */
  static Optional<SmallChoice> of(Assembly assembly, Actions actions) {
    if (assembly.columns() > MOST || assembly.rows() > assembly.columns()) {
      return Optional.empty();
    }
    SmallChoice choice = new SmallChoice(assembly);
    choice.fill(assembly, actions);
    return choice.eliminate() && choice.isModerate() ? Optional.of(choice) : Optional.empty();
  }

  /** Moments are taken about the place of the first force on each member. */
  private void fill(Assembly assembly, Actions actions) {
    KeptChoice.firstPlaces(actions, centre);
    int members = centre.length / 2;
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int at = assembly.firstRow(body) * columns + actions.column[action];
        a[at] += actions.fx(action);
        a[at + columns] += actions.fy(action);
        if (body < members) {
          a[at + 2 * columns] += actions.moment(action, centre[2 * body], centre[2 * body + 1]);
        }
      }
    }
    double zero = assembly.scale().zero();
    int at = 0;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++, at++) {
        double value = Math.abs(a[at]);
        if (value > zero) {
          columnsOfRow[i] |= 1L << j;
          rowsOfColumn[j] |= 1L << i;
          size[i] = Math.max(size[i], value);
        } else {
          a[at] = 0;
        }
      }
    }
  }

  /** False if an equation has no force left that it can be solved for. */
  private boolean eliminate() {
    for (int step = 0; step < rows; step++) {
      int pivotRow = shortestRow();
      int pivotColumn = pivotColumn(pivotRow);
      if (pivotColumn < 0) {
        return false;
      }
      openRows &= ~(1L << pivotRow);
      openColumns &= ~(1L << pivotColumn);
      row[step] = pivotRow;
      column[step] = pivotColumn;
      others[step] = rowsOfColumn[pivotColumn] & ~(1L << pivotRow);
      putInto(others[step], pivotRow, pivotColumn);
    }
    return true;
  }

  /** An equation with the fewest forces that are not solved for: it touches the fewest others. */
  private int shortestRow() {
    int best = -1;
    int fewest = Integer.MAX_VALUE;
    for (long left = openRows; left != 0; left &= left - 1) {
      int i = Long.numberOfTrailingZeros(left);
      int count = Long.bitCount(columnsOfRow[i] & openColumns);
      if (count < fewest) {
        fewest = count;
        best = i;
      }
    }
    return best;
  }

  /** The force with the largest coefficient of those not solved for; −1 if all are small. */
  private int pivotColumn(int i) {
    int best = -1;
    double largest = FIRM * size[i];
    for (long left = columnsOfRow[i] & openColumns; left != 0; left &= left - 1) {
      int j = Long.numberOfTrailingZeros(left);
      double own = Math.abs(a[i * columns + j]);
      if (own > largest) {
        largest = own;
        best = j;
      }
    }
    return best;
  }

  /** Takes multiples of a row from others, so that the pivot's column vanishes in them. */
  private void putInto(long rowsToChange, int pivotRow, int pivotColumn) {
    int from = pivotRow * columns;
    long touched = columnsOfRow[pivotRow] & ~(1L << pivotColumn);
    for (long left = rowsToChange; left != 0; left &= left - 1) {
      int i = Long.numberOfTrailingZeros(left);
      int to = i * columns;
      double multiple = a[to + pivotColumn] / a[from + pivotColumn];
      for (long also = touched; also != 0; also &= also - 1) {
        int j = Long.numberOfTrailingZeros(also);
        a[to + j] -= multiple * a[from + j];
      }
      a[to + pivotColumn] = multiple;
      columnsOfRow[i] = (columnsOfRow[i] | touched) & ~(1L << pivotColumn);
    }
    for (long also = touched; also != 0; also &= also - 1) {
      rowsOfColumn[Long.numberOfTrailingZeros(also)] |= rowsToChange;
    }
    rowsOfColumn[pivotColumn] = 1L << pivotRow;
  }

  /** Whether no free force enters another one many times. */
  private boolean isModerate() {
    boolean moderate = true;
    for (int step = 0; step < rows; step++) {
      int at = row[step] * columns;
      double most = ForceSpace.MODERATE * Math.abs(a[at + column[step]]);
      for (long left = columnsOfRow[row[step]] & openColumns; left != 0; left &= left - 1) {
        moderate &= Math.abs(a[at + Long.numberOfTrailingZeros(left)]) <= most;
      }
    }
    return moderate;
  }

  @Override
  public int freeColumn(int which) {
    long left = openColumns;
    for (int before = 0; before < which; before++) {
      left &= left - 1;
    }
    return Long.numberOfTrailingZeros(left);
  }

  /**
   * Writes what one unit of each free force adds.
   *
   * @param free receives the forces, by unknowns
   */
  void write(double[][] free) {
    int which = 0;
    for (long left = openColumns; left != 0; left &= left - 1) {
      int j = Long.numberOfTrailingZeros(left);
      double[] forces = free[which++];
      Arrays.fill(forces, 0);
      for (int step = 0; step < rows; step++) {
        int at = row[step] * columns;
        if ((columnsOfRow[row[step]] >> j & 1) != 0) {
          forces[column[step]] = -a[at + j] / a[at + column[step]];
        }
      }
      forces[j] = 1;
    }
  }

  @Override
  public void turn(double[] load) {
    KeptChoice.shift(load, centre);
    for (int step = 0; step < rows; step++) {
      double of = load[row[step]];
      if (of != 0) {
        for (long left = others[step]; left != 0; left &= left - 1) {
          int i = Long.numberOfTrailingZeros(left);
          load[i] -= a[i * columns + column[step]] * of;
        }
      }
    }
  }

  @Override
  public void respond(double[] turned, double[] forces) {
    Arrays.fill(forces, 0);
    for (int step = 0; step < rows; step++) {
      forces[column[step]] = turned[row[step]] / a[row[step] * columns + column[step]];
    }
  }
}
