package bellcrank.statics.equilibrium.internal;

/**
 * Reverse Cuthill–McKee order of a block (Cuthill and McKee 1969): breadth first from an end of the
 * block, neighbours of few neighbours first, then turned round. Keeps the factor's fill near the
 * diagonal of long devices.
 */
final class CuthillMcKee {

  private final int size;
  private final int[] start;
  private final int[] neighbour;

  CuthillMcKee(OrderedRows rows, int from, int size) {
    this.size = size;
    int[] degree = new int[size + 1];
    for (int i = 0; i < size; i++) {
      for (int k = rows.start[from + i]; k < rows.start[from + i + 1]; k++) {
        int j = rows.order.position[rows.column[k]] - from;
        if (j >= 0 && j < size && j != i) {
          degree[i + 1]++;
          degree[j + 1]++;
        }
      }
    }
    for (int i = 0; i < size; i++) {
      degree[i + 1] += degree[i];
    }
    start = degree;
    neighbour = new int[start[size]];
    int[] next = start.clone();
    for (int i = 0; i < size; i++) {
      for (int k = rows.start[from + i]; k < rows.start[from + i + 1]; k++) {
        int j = rows.order.position[rows.column[k]] - from;
        if (j >= 0 && j < size && j != i) {
          neighbour[next[i]++] = j;
          neighbour[next[j]++] = i;
        }
      }
    }
  }

  int[] newNumbers() {
    int[] queue = new int[size];
    int root = farthest(farthest(0, queue), queue);
    boolean[] seen = new boolean[size];
    int used = breadthFirst(root, queue, seen);
    int[] numbers = new int[size];
    for (int i = 0; i < used; i++) {
      numbers[queue[i]] = size - 1 - i;
    }
    return numbers;
  }

  private int farthest(int root, int[] queue) {
    int used = breadthFirst(root, queue, new boolean[size]);
    return queue[used - 1];
  }

  private int breadthFirst(int root, int[] queue, boolean[] seen) {
    int head = 0;
    int tail = 0;
    queue[tail++] = root;
    seen[root] = true;
    while (head < tail) {
      int node = queue[head++];
      int first = tail;
      for (int k = start[node]; k < start[node + 1]; k++) {
        int other = neighbour[k];
        if (!seen[other]) {
          seen[other] = true;
          // insertion by degree: neighbourhoods are small
          int at = tail++;
          while (at > first && degree(queue[at - 1]) > degree(other)) {
            queue[at] = queue[at - 1];
            at--;
          }
          queue[at] = other;
        }
      }
    }
    return tail;
  }

  private int degree(int node) {
    return start[node + 1] - start[node];
  }
}
