package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;

/**
 * The held motion rows of a device and a further one that drives it, where they are as many as the
 * velocities, solved block after block in an order that is found once: from coefficients at a
 * placement that fits nothing, where only what is always zero is zero. Storage is used again.
 */
final class DrivenRows {

  private final Assembly assembly;
  private final int size;
  private final OrderedRows rows;
  private final BlockSolver solver;

  /** Where in the ordered rows the three numbers of each action go; −1 if they are always zero. */
  private final int[] target;

  /** Where the further row's number for each velocity goes; −1 if it is always zero. */
  private final int[] further;

  private final double zero;
  private final boolean square;

  /**
   * Finds the order.
   *
   * @param held whether each unknown is held, as many as the velocities less one
   * @param more a further row; what is zero in it stays so
   * @param least pivot at or below which small blocks count as singular
   */
  DrivenRows(Assembly assembly, boolean[] held, double[] more, double least) {
    this.assembly = assembly;
    size = assembly.rows();
    zero = assembly.scale().zero();
    Placements scattered = assembly.placements();
    scattered.scatter();
    Actions actions = assembly.actions();
    assembly.evaluate(scattered, actions);
    int[] rowOfColumn = rowOfColumn(assembly, held);
    int[] start = starts(actions, rowOfColumn, more);
    int[] row = new int[start[size]];
    double[] value = new double[start[size]];
    int[] next = start.clone();
    target = new int[3 * actions.count()];
    further = new int[size];
    Arrays.fill(target, -1);
    Arrays.fill(further, -1);
    for (int action = 0; action < actions.count(); action++) {
      int of = rowOfColumn[actions.column[action]];
      for (int k = 0; k < numbers(actions.body[action], of); k++) {
        int column = assembly.firstRow(actions.body[action]) + k;
        int entry = entry(row, next, start[column], column, of);
        value[entry] += number(actions, action, k);
        target[3 * action + k] = entry;
      }
    }
    for (int i = 0; i < size; i++) {
      if (isOther(more[i])) {
        further[i] = entry(row, next, start[i], i, size - 1);
        value[further[i]] = 1;
      }
    }
    Order order = Order.of(new Pattern(new Equations(size, start, row, value), zero, size));
    square = order.isSquare();
    rows = new OrderedRows(order);
    solver = new BlockSolver(rows, Math.max(zero, least));
    int[] placeOfEntry = new int[value.length];
    Arrays.fill(placeOfEntry, -1);
    for (int k = 0; k < rows.entry.length; k++) {
      placeOfEntry[rows.entry[k]] = k;
    }
    replace(target, placeOfEntry);
    replace(further, placeOfEntry);
  }

  private static int[] rowOfColumn(Assembly assembly, boolean[] held) {
    int[] rowOfColumn = new int[assembly.columns()];
    Arrays.fill(rowOfColumn, -1);
    int count = 0;
    for (int column = 0; column < held.length; column++) {
      rowOfColumn[column] = held[column] ? count++ : -1;
    }
    return rowOfColumn;
  }

  private int[] starts(Actions actions, int[] rowOfColumn, double[] more) {
    int[] start = new int[size + 1];
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      for (int k = 0; k < numbers(body, rowOfColumn[actions.column[action]]); k++) {
        start[assembly.firstRow(body) + k + 1]++;
      }
    }
    for (int i = 0; i < size; i++) {
      start[i + 1] += start[i] + (isOther(more[i]) ? 1 : 0);
    }
    return start;
  }

  private int numbers(int body, int row) {
    return body < 0 || row < 0 ? 0 : body < assembly.memberCount() ? 3 : 2;
  }

  /** Two actions of one connection on one body share an entry; one is then left unused, at zero. */
  private static int entry(int[] row, int[] next, int start, int column, int of) {
    for (int k = start; k < next[column]; k++) {
      if (row[k] == of) {
        return k;
      }
    }
    row[next[column]] = of;
    return next[column]++;
  }

  private static void replace(int[] entries, int[] placeOfEntry) {
    for (int k = 0; k < entries.length; k++) {
      entries[k] = entries[k] < 0 ? -1 : placeOfEntry[entries[k]];
    }
  }

  private static double number(Actions actions, int action, int k) {
    return k == 0
        ? actions.motionX(action)
        : k == 1 ? actions.motionY(action) : actions.motionMoment(action, 0, 0);
  }

  private boolean isOther(double value) {
    return Math.abs(value) > zero;
  }

  /** Whether the order serves a further row: it has numbers only where the first one had. */
  boolean covers(double[] more) {
    for (int i = 0; i < size; i++) {
      if (further[i] < 0 && isOther(more[i])) {
        return false;
      }
    }
    return true;
  }

  /**
   * Takes numbers and factors them.
   *
   * @param actions with numbers
   * @param more a further row that is covered
   * @return false if the rows depend on one another
   */
  boolean factor(Actions actions, double[] more) {
    if (!square) {
      return false;
    }
    double[] value = rows.value;
    Arrays.fill(value, 0);
    for (int action = 0; action < actions.count(); action++) {
      int k = 3 * action;
      if (target[k] >= 0) {
        value[target[k]] += actions.motionX(action);
      }
      if (target[k + 1] >= 0) {
        value[target[k + 1]] += actions.motionY(action);
      }
      if (target[k + 2] >= 0) {
        value[target[k + 2]] += actions.motionMoment(action, 0, 0);
      }
    }
    for (int i = 0; i < size; i++) {
      if (further[i] >= 0) {
        value[further[i]] += more[i];
      }
    }
    return solver.factor();
  }

  /** On which side of singular each block last factored lies. */
  Senses senses() {
    return solver.senses();
  }

  /**
   * Solves with the last factor.
   *
   * @param right what the motion shall do along each held row, then along the further one
   * @param velocities written
   * @return false if they are out of all bounds
   */
  boolean solve(double[] right, double[] velocities) {
    solver.solve(right, velocities);
    boolean finite = true;
    for (double one : velocities) {
      finite &= Math.abs(one) < Double.MAX_VALUE;
    }
    return finite;
  }
}
