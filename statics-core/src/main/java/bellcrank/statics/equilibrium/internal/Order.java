package bellcrank.statics.equilibrium.internal;

/**
 * The order of solution (Dulmage and Mendelsohn 1958): an over-determined part with more equations
 * than unknowns, a square part in strongly connected blocks that are solved one after another, and
 * an under-determined part. An equation of a block contains unknowns of that block, of earlier
 * blocks and of the over-determined part only.
 */
final class Order {

  /** Part of a row or column. */
  static final byte SQUARE = 0;

  static final byte OVER = 1;
  static final byte UNDER = 2;

  final Pattern pattern;
  final byte[] rowPart;
  final byte[] columnPart;

  /** Columns of the square part in the order of solution, block after block. */
  final int[] column;

  /** Row matched to each of {@link #column}. */
  final int[] row;

  /** Place of each column in {@link #column}; −1 outside the square part. */
  final int[] position;

  /** Where each block starts in {@link #column}; one more entry than blocks. */
  final int[] blockStart;

  final int blocks;
  final int largestBlock;
  private final int overRows;
  private final int underColumns;

  private Order(Pattern p, Matching matching) {
    pattern = p;
    rowPart = new byte[p.rows];
    columnPart = new byte[p.columns];
    int square = p.columns;
    int over = 0;
    int under = 0;
    if (matching.size < p.rows || matching.size < p.columns) {
      over = markOver(p, matching);
      under = markUnder(p, matching);
      square = 0;
      for (byte part : columnPart) {
        square += part == SQUARE ? 1 : 0;
      }
    }
    overRows = over;
    underColumns = under;
    column = new int[square];
    row = new int[square];
    int[] starts = new int[square + 1];
    blocks = new StrongComponents(p, matching, columnPart).collect(column, starts);
    blockStart = java.util.Arrays.copyOf(starts, blocks + 1);
    position = new int[p.columns];
    java.util.Arrays.fill(position, -1);
    for (int k = 0; k < square; k++) {
      row[k] = matching.rowOfColumn[column[k]];
      position[column[k]] = k;
    }
    int largest = 0;
    for (int block = 0; block < blocks; block++) {
      largest = Math.max(largest, blockStart[block + 1] - blockStart[block]);
    }
    largestBlock = largest;
  }

  /** Finds the order for a pattern. */
  static Order of(Pattern pattern) {
    return new Order(pattern, new Matching(pattern));
  }

  /** Whether the square part is everything. */
  boolean isSquare() {
    return overRows == 0 && underColumns == 0;
  }

  /** Rows of a part. */
  int[] rowsOf(byte part) {
    return where(rowPart, part);
  }

  /** Columns of a part. */
  int[] columnsOf(byte part) {
    return where(columnPart, part);
  }

  private static int[] where(byte[] parts, byte wanted) {
    int count = 0;
    for (byte part : parts) {
      count += part == wanted ? 1 : 0;
    }
    int[] found = new int[count];
    int used = 0;
    for (int i = 0; i < parts.length; i++) {
      if (parts[i] == wanted) {
        found[used++] = i;
      }
    }
    return found;
  }

  /** Rows and columns that alternating paths reach from unmatched rows. */
  private int markOver(Pattern p, Matching matching) {
    int[] stack = new int[p.rows];
    int used = 0;
    int count = 0;
    for (int r = 0; r < p.rows; r++) {
      if (matching.columnOfRow[r] < 0) {
        rowPart[r] = OVER;
        stack[used++] = r;
        count++;
      }
    }
    while (used > 0) {
      int r = stack[--used];
      for (int k = p.rowStart[r]; k < p.rowStart[r + 1]; k++) {
        int c = p.rowColumn[k];
        if (columnPart[c] != OVER) {
          columnPart[c] = OVER;
          int partner = matching.rowOfColumn[c];
          if (rowPart[partner] != OVER) {
            rowPart[partner] = OVER;
            stack[used++] = partner;
            count++;
          }
        }
      }
    }
    return count;
  }

  /** Rows and columns that alternating paths reach from unmatched columns. */
  private int markUnder(Pattern p, Matching matching) {
    int[] stack = new int[p.columns];
    int used = 0;
    int count = 0;
    for (int c = 0; c < p.columns; c++) {
      if (matching.rowOfColumn[c] < 0) {
        columnPart[c] = UNDER;
        stack[used++] = c;
        count++;
      }
    }
    while (used > 0) {
      int c = stack[--used];
      for (int k = p.columnStart[c]; k < p.columnStart[c + 1]; k++) {
        int r = p.columnRow[k];
        if (rowPart[r] != UNDER) {
          rowPart[r] = UNDER;
          int partner = matching.columnOfRow[r];
          if (columnPart[partner] != UNDER) {
            columnPart[partner] = UNDER;
            stack[used++] = partner;
            count++;
          }
        }
      }
    }
    return count;
  }
}
