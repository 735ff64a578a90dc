package bellcrank.statics.equilibrium.internal;

/**
 * A largest matching of equations and unknowns: which unknown each equation could be solved for.
 * Equations and unknowns that have one partner left are matched first (Karp and Sipser 1981), the
 * rest by augmenting paths. Entries at or below the zero bound do not count.
 */
final class Matching {

  final int[] columnOfRow;
  final int[] rowOfColumn;
  int size;

  private final Pattern p;
  private final int[] columnDegree;
  private final int[] rowDegree;
  private final int[] queue;
  private int head;
  private int tail;

  Matching(Pattern pattern) {
    p = pattern;
    columnOfRow = new int[p.rows];
    rowOfColumn = new int[p.columns];
    java.util.Arrays.fill(columnOfRow, -1);
    java.util.Arrays.fill(rowOfColumn, -1);
    columnDegree = new int[p.columns];
    rowDegree = new int[p.rows];
    queue = new int[p.rows + p.columns];
    peel();
    if (size < Math.min(p.rows, p.columns)) {
      augment();
    }
  }

  private void peel() {
    for (int row = 0; row < p.rows; row++) {
      rowDegree[row] = p.rowStart[row + 1] - p.rowStart[row];
      if (rowDegree[row] == 1) {
        queue[tail++] = row;
      }
    }
    for (int column = 0; column < p.columns; column++) {
      columnDegree[column] = p.columnStart[column + 1] - p.columnStart[column];
      if (columnDegree[column] == 1) {
        queue[tail++] = p.rows + column;
      }
    }
    drain();
    for (int row = 0; row < p.rows; row++) {
      if (columnOfRow[row] < 0) {
        matchRow(row);
        drain();
      }
    }
  }

  private void drain() {
    while (head < tail) {
      int node = queue[head++];
      if (node < p.rows) {
        if (columnOfRow[node] < 0) {
          matchRow(node);
        }
      } else if (rowOfColumn[node - p.rows] < 0) {
        matchColumn(node - p.rows);
      }
    }
  }

  private void matchRow(int row) {
    int best = -1;
    for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
      int column = p.rowColumn[k];
      if (rowOfColumn[column] < 0 && (best < 0 || columnDegree[column] < columnDegree[best])) {
        best = column;
      }
    }
    if (best >= 0) {
      match(row, best);
    }
  }

  private void matchColumn(int column) {
    for (int k = p.columnStart[column]; k < p.columnStart[column + 1]; k++) {
      int row = p.columnRow[k];
      if (columnOfRow[row] < 0) {
        match(row, column);
        return;
      }
    }
  }

  private void match(int row, int column) {
    columnOfRow[row] = column;
    rowOfColumn[column] = row;
    size++;
    for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
      int other = p.rowColumn[k];
      if (--columnDegree[other] == 1 && rowOfColumn[other] < 0 && tail < queue.length) {
        queue[tail++] = p.rows + other;
      }
    }
    for (int k = p.columnStart[column]; k < p.columnStart[column + 1]; k++) {
      int other = p.columnRow[k];
      if (--rowDegree[other] == 1 && columnOfRow[other] < 0 && tail < queue.length) {
        queue[tail++] = other;
      }
    }
  }

  /** Depth-first search for augmenting paths from unmatched columns, without recursion. */
  private void augment() {
    int[] stamp = new int[p.rows];
    java.util.Arrays.fill(stamp, -1);
    int[] path = new int[p.columns + 1];
    int[] position = new int[p.columns + 1];
    for (int column = 0; column < p.columns && size < p.rows; column++) {
      if (rowOfColumn[column] < 0 && search(column, stamp, path, position)) {
        size++;
      }
    }
  }

  private boolean search(int root, int[] stamp, int[] path, int[] position) {
    int depth = 0;
    path[0] = root;
    position[0] = p.columnStart[root];
    while (depth >= 0) {
      int column = path[depth];
      int end = p.columnStart[column + 1];
      int next = -1;
      while (position[depth] < end) {
        int row = p.columnRow[position[depth]++];
        if (stamp[row] == root) {
          continue;
        }
        stamp[row] = root;
        if (columnOfRow[row] < 0) {
          flip(path, position, depth);
          return true;
        }
        next = columnOfRow[row];
        break;
      }
      if (next < 0) {
        depth--;
      } else {
        depth++;
        path[depth] = next;
        position[depth] = p.columnStart[next];
      }
    }
    return false;
  }

  private void flip(int[] path, int[] position, int depth) {
    for (int d = depth; d >= 0; d--) {
      int row = p.columnRow[position[d] - 1];
      rowOfColumn[path[d]] = row;
      columnOfRow[row] = path[d];
    }
  }
}
