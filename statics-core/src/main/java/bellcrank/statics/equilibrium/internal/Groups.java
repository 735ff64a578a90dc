package bellcrank.statics.equilibrium.internal;

/** Equations and unknowns that hang together through coefficients. */
final class Groups {

  final int count;
  private final int[] rows;
  private final int[] columns;
  private final int[] rowStart;
  private final int[] columnStart;
  private final int[] groupOfRow;
  private final int[] groupOfColumn;

  Groups(Pattern p) {
    groupOfRow = new int[p.rows];
    groupOfColumn = new int[p.columns];
    java.util.Arrays.fill(groupOfRow, -1);
    java.util.Arrays.fill(groupOfColumn, -1);
    int[] stack = new int[p.rows + p.columns];
    int groups = 0;
    for (int row = 0; row < p.rows; row++) {
      if (groupOfRow[row] < 0) {
        flood(p, row, groups++, stack);
      }
    }
    for (int column = 0; column < p.columns; column++) {
      if (groupOfColumn[column] < 0) {
        groupOfColumn[column] = groups++;
      }
    }
    count = groups;
    rowStart = starts(groupOfRow, groups);
    columnStart = starts(groupOfColumn, groups);
    rows = sorted(groupOfRow, rowStart);
    columns = sorted(groupOfColumn, columnStart);
  }

  private void flood(Pattern p, int seed, int group, int[] stack) {
    int used = 0;
    groupOfRow[seed] = group;
    stack[used++] = seed;
    while (used > 0) {
      int node = stack[--used];
      if (node < p.rows) {
        for (int k = p.rowStart[node]; k < p.rowStart[node + 1]; k++) {
          int column = p.rowColumn[k];
          if (groupOfColumn[column] < 0) {
            groupOfColumn[column] = group;
            stack[used++] = p.rows + column;
          }
        }
      } else {
        int column = node - p.rows;
        for (int k = p.columnStart[column]; k < p.columnStart[column + 1]; k++) {
          int row = p.columnRow[k];
          if (groupOfRow[row] < 0) {
            groupOfRow[row] = group;
            stack[used++] = row;
          }
        }
      }
    }
  }

  int[] rows(int group) {
    return java.util.Arrays.copyOfRange(rows, rowStart[group], rowStart[group + 1]);
  }

  int[] columns(int group) {
    return java.util.Arrays.copyOfRange(columns, columnStart[group], columnStart[group + 1]);
  }

  /** Where the members of each group start once they are sorted by group. */
  private static int[] starts(int[] groupOf, int groups) {
    int[] start = new int[groups + 1];
    for (int group : groupOf) {
      start[group + 1]++;
    }
    for (int group = 0; group < groups; group++) {
      start[group + 1] += start[group];
    }
    return start;
  }

  private static int[] sorted(int[] groupOf, int[] start) {
    int[] next = start.clone();
    int[] sorted = new int[groupOf.length];
    for (int i = 0; i < groupOf.length; i++) {
      sorted[next[groupOf[i]]++] = i;
    }
    return sorted;
  }
}
