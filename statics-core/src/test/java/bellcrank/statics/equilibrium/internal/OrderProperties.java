package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.RandomDevices;
import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What makes an order of solution one, on the patterns of random devices. */
class OrderProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.medium();
  }

  @Provide
  Arbitrary<Device> mostlyHeld() {
    return RandomDevices.mostlyHeld();
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void theMatchingIsOneAndIsALargest(@ForAll("any") Device device) {
    Drawn drawn = Drawn.of(device);
    Pattern p = drawn.pattern();
    Matching matching = new Matching(p);
    int pairs = 0;
    for (int row = 0; row < p.rows; row++) {
      int column = matching.columnOfRow[row];
      if (column >= 0) {
        pairs++;
        assertThat(matching.rowOfColumn[column]).isEqualTo(row);
        assertThat(contains(p, row, column)).isTrue();
      }
    }
    assertThat(matching.size).isEqualTo(pairs).isEqualTo(largestMatching(p));
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void eachPartHasTheShapeThatItsNameTells(@ForAll("any") Device device) {
    Drawn drawn = Drawn.of(device);
    Order order = drawn.order();
    Pattern p = drawn.pattern();
    int overRows = order.rowsOf(Order.OVER).length;
    int overColumns = order.columnsOf(Order.OVER).length;
    int underRows = order.rowsOf(Order.UNDER).length;
    int underColumns = order.columnsOf(Order.UNDER).length;
    assertThat(overRows == 0 ? 1 : overRows - overColumns).isPositive();
    assertThat(underColumns == 0 ? 1 : underColumns - underRows).isPositive();
    assertThat(order.column).hasSize(p.columns - overColumns - underColumns);
    assertThat(order.row).hasSize(p.rows - overRows - underRows);
    assertThat(order.isSquare()).isEqualTo(overRows + underColumns == 0);
    for (int row = 0; row < p.rows; row++) {
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        byte part = order.columnPart[p.rowColumn[k]];
        if (order.rowPart[row] == Order.OVER) {
          assertThat(part).as("equations of the over-determined part").isEqualTo(Order.OVER);
        } else if (order.rowPart[row] == Order.SQUARE) {
          assertThat(part).as("equations of the square part").isNotEqualTo(Order.UNDER);
        }
      }
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void eachBlockNeedsOnlyEarlierOnes(@ForAll("mostlyHeld") Device device) {
    Drawn drawn = Drawn.of(device);
    Order order = drawn.order();
    Pattern p = drawn.pattern();
    int[] block = drawn.blockOfColumn();
    int largest = 0;
    for (int b = 0; b < order.blocks; b++) {
      int from = order.blockStart[b];
      int to = order.blockStart[b + 1];
      largest = Math.max(largest, to - from);
      for (int i = from; i < to; i++) {
        assertThat(contains(p, order.row[i], order.column[i])).isTrue();
        for (int k = p.rowStart[order.row[i]]; k < p.rowStart[order.row[i] + 1]; k++) {
          assertThat(block[p.rowColumn[k]]).isLessThanOrEqualTo(b);
        }
      }
      assertThat(isIrreducible(order, from, to)).as("block " + b).isTrue();
    }
    assertThat(order.largestBlock).isEqualTo(largest);
  }

  /** Whether every unknown of a block reaches every other through matched equations. */
  private static boolean isIrreducible(Order order, int from, int to) {
    Pattern p = order.pattern;
    int size = to - from;
    for (int start = 0; start < size; start++) {
      boolean[] seen = new boolean[size];
      int[] stack = new int[size];
      int used = 0;
      int count = 1;
      seen[start] = true;
      stack[used++] = start;
      while (used > 0) {
        int row = order.row[from + stack[--used]];
        for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
          for (int other = 0; other < size; other++) {
            if (order.column[from + other] == p.rowColumn[k] && !seen[other]) {
              seen[other] = true;
              stack[used++] = other;
              count++;
            }
          }
        }
      }
      if (count < size) {
        return false;
      }
    }
    return true;
  }

  private static boolean contains(Pattern p, int row, int column) {
    for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
      if (p.rowColumn[k] == column) {
        return true;
      }
    }
    return false;
  }

  /** The plain method: one augmenting path after another, recursively. */
  private static int largestMatching(Pattern p) {
    int[] rowOfColumn = new int[p.columns];
    Arrays.fill(rowOfColumn, -1);
    int size = 0;
    for (int row = 0; row < p.rows; row++) {
      size += augment(p, row, rowOfColumn, new boolean[p.columns]) ? 1 : 0;
    }
    return size;
  }

  private static boolean augment(Pattern p, int row, int[] rowOfColumn, boolean[] seen) {
    for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
      int column = p.rowColumn[k];
      if (!seen[column]) {
        seen[column] = true;
        if (rowOfColumn[column] < 0 || augment(p, rowOfColumn[column], rowOfColumn, seen)) {
          rowOfColumn[column] = row;
          return true;
        }
      }
    }
    return false;
  }
}
