package bellcrank.statics.equilibrium.internal;

/**
 * Which coefficients are other than zero, by columns and by rows. {@code rowEntry} tells where the
 * value of a row's entry stands in the equations.
 */
final class Pattern {

  final int rows;
  final int columns;
  final int[] columnStart;
  final int[] columnRow;
  final int[] rowStart;
  final int[] rowColumn;
  final int[] rowEntry;

  /**
   * The pattern of the entries above a bound.
   *
   * @param e equations with numbers in them
   * @param zero bound at or below which a coefficient is a structural zero
   * @param columns only the columns below this number count
   */
  Pattern(Equations e, double zero, int columns) {
    rows = e.rows;
    this.columns = columns;
    columnStart = new int[columns + 1];
    rowStart = new int[rows + 1];
    int count = 0;
    for (int column = 0; column < columns; column++) {
      for (int k = e.start[column]; k < e.start[column + 1]; k++) {
        if (Math.abs(e.value[k]) > zero) {
          rowStart[e.row[k] + 1]++;
          count++;
        }
      }
      columnStart[column + 1] = count;
    }
    for (int row = 0; row < rows; row++) {
      rowStart[row + 1] += rowStart[row];
    }
    columnRow = new int[count];
    rowColumn = new int[count];
    rowEntry = new int[count];
    int[] next = rowStart.clone();
    int used = 0;
    for (int column = 0; column < columns; column++) {
      for (int k = e.start[column]; k < e.start[column + 1]; k++) {
        if (Math.abs(e.value[k]) > zero) {
          int row = e.row[k];
          columnRow[used++] = row;
          rowColumn[next[row]] = column;
          rowEntry[next[row]++] = k;
        }
      }
    }
  }
}
