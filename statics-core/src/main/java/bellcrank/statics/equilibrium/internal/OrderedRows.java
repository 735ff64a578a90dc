package bellcrank.statics.equilibrium.internal;

/**
 * The coefficients of the square part row after row in the order of solution, the matched one of
 * each row first: what solving reads, side by side.
 */
final class OrderedRows {

  final Order order;

  /** Where each row starts; one more entry than rows. */
  final int[] start;

  final int[] column;
  final double[] value;

  /** Where each coefficient stands in the equations. */
  final int[] entry;

  OrderedRows(Order order) {
    this.order = order;
    Pattern p = order.pattern;
    int rows = order.row.length;
    start = new int[rows + 1];
    for (int i = 0; i < rows; i++) {
      int row = order.row[i];
      start[i + 1] = start[i] + p.rowStart[row + 1] - p.rowStart[row];
    }
    column = new int[start[rows]];
    value = new double[start[rows]];
    entry = new int[start[rows]];
    for (int i = 0; i < rows; i++) {
      int from = p.rowStart[order.row[i]];
      int matched = order.column[i];
      int next = start[i] + 1;
      for (int k = from; k < p.rowStart[order.row[i] + 1]; k++) {
        int to = p.rowColumn[k] == matched ? start[i] : next++;
        column[to] = p.rowColumn[k];
        entry[to] = p.rowEntry[k];
      }
    }
  }

  /** Takes the numbers of the equations. */
  void take(Equations equations) {
    for (int k = 0; k < entry.length; k++) {
      value[k] = equations.value[entry[k]];
    }
  }
}
