package bellcrank.statics.equilibrium.internal;

/**
 * Strongly connected components of the matched unknowns (Tarjan 1972), without recursion. An
 * unknown depends on the others in its matched equation; components come out with what they depend
 * on first, which is the order of solution.
 */
final class StrongComponents {

  private final Pattern p;
  private final Matching matching;
  private final byte[] part;
  private final int[] index;
  private final int[] low;
  private final int[] position;
  private final int[] path;
  private final int[] open;
  private final boolean[] isOpen;
  private int counter;
  private int openCount;

  StrongComponents(Pattern pattern, Matching matching, byte[] columnPart) {
    p = pattern;
    this.matching = matching;
    part = columnPart;
    int n = p.columns;
    index = new int[n];
    low = new int[n];
    position = new int[n];
    path = new int[n];
    open = new int[n];
    isOpen = new boolean[n];
  }

  /** Writes the columns component after component and where each starts; returns their number. */
  int collect(int[] columns, int[] starts) {
    int used = 0;
    int components = 0;
    for (int root = 0; root < p.columns; root++) {
      if (part[root] != Order.SQUARE || index[root] != 0) {
        continue;
      }
      int depth = 0;
      enter(root, 0);
      while (depth >= 0) {
        int column = path[depth];
        int next = step(column);
        if (next >= 0) {
          enter(next, ++depth);
          continue;
        }
        if (low[column] == index[column]) {
          int member;
          do {
            member = open[--openCount];
            isOpen[member] = false;
            columns[used++] = member;
          } while (member != column);
          starts[++components] = used;
        }
        depth--;
        if (depth >= 0) {
          low[path[depth]] = Math.min(low[path[depth]], low[column]);
        }
      }
    }
    return components;
  }

  private void enter(int column, int depth) {
    path[depth] = column;
    index[column] = ++counter;
    low[column] = counter;
    position[column] = p.rowStart[matching.rowOfColumn[column]];
    open[openCount++] = column;
    isOpen[column] = true;
  }

  /** Next unvisited column on which this one depends; −1 when all are done. */
  private int step(int column) {
    int end = p.rowStart[matching.rowOfColumn[column] + 1];
    while (position[column] < end) {
      int other = p.rowColumn[position[column]++];
      if (part[other] != Order.SQUARE) {
        continue;
      }
      if (index[other] == 0) {
        return other;
      }
      if (isOpen[other]) {
        low[column] = Math.min(low[column], index[other]);
      }
    }
    return -1;
  }
}
