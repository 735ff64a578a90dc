package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Matchings of patterns of any kind. */
class MatchingTest {

  /**
   * A device with any pattern: joints on a level line are the equations (those of upright forces
   * stay empty), ropes that turn back at some of them are the unknowns.
   */
  private static Pattern pattern(int equations, List<List<Integer>> unknowns) {
    DeviceBuilder device = Device.named("ropes").point("left", -1, 0);
    for (int i = 0; i < equations; i++) {
      device.point("P" + i, i + 1, 0).joint("P" + i);
    }
    for (int j = 0; j < unknowns.size(); j++) {
      List<Stop> stops = new ArrayList<>();
      for (int i : unknowns.get(j)) {
        stops.add(
            stops.isEmpty()
                ? Stop.end("ground", "left")
                : Stop.sheave("ground", "left", 0, Turn.CLOCKWISE));
        stops.add(Stop.sheave("P" + i, "P" + i, 0, Turn.CLOCKWISE));
      }
      stops.add(Stop.end("ground", "left"));
      device.connect(new Reeving("rope " + j, stops, 1, Reeving.Hauling.IDEAL));
    }
    return Drawn.of(device.build()).pattern();
  }

  private static int row(int equation) {
    return 2 * equation;
  }

  private static void isMatching(Pattern p, Matching matching, int size) {
    int pairs = 0;
    for (int row = 0; row < p.rows; row++) {
      int column = matching.columnOfRow[row];
      if (column >= 0) {
        pairs++;
        assertThat(matching.rowOfColumn[column]).isEqualTo(row);
        int there = row;
        assertThat(
                Arrays.stream(p.columnRow, p.columnStart[column], p.columnStart[column + 1])
                    .anyMatch(other -> other == there))
            .isTrue();
      }
    }
    assertThat(pairs).isEqualTo(matching.size).isEqualTo(size);
    assertThat(Arrays.stream(matching.rowOfColumn).filter(row -> row >= 0).count()).isEqualTo(size);
  }

  @Test
  void aChainIsMatchedFromItsEnd() {
    Pattern p = pattern(3, List.of(List.of(0), List.of(0, 1), List.of(1, 2)));
    Matching matching = new Matching(p);
    isMatching(p, matching, 3);
    assertThat(matching.columnOfRow[row(0)]).isZero();
    assertThat(matching.columnOfRow[row(1)]).isEqualTo(1);
    assertThat(matching.columnOfRow[row(2)]).isEqualTo(2);
  }

  @Test
  void anEquationOfOneUnknownTakesIt() {
    Pattern p = pattern(3, List.of(List.of(0, 1, 2), List.of(1, 2), List.of(1, 2)));
    Matching matching = new Matching(p);
    isMatching(p, matching, 3);
    assertThat(matching.columnOfRow[row(0)]).isZero();
  }

  @Test
  void twoUnknownsOfOneEquationLeaveOneOver() {
    Pattern p = pattern(2, List.of(List.of(0), List.of(0), List.of(0, 1)));
    isMatching(p, new Matching(p), 2);
  }

  @Test
  void anEmptyPatternHasNone() {
    Pattern p = pattern(2, List.of());
    isMatching(p, new Matching(p), 0);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
  void theMatchingIsALargest(int equations) {
    Random random = new Random(equations);
    for (int run = 0; run < 60; run++) {
      int columns = equations - 1 + random.nextInt(3);
      List<List<Integer>> unknowns = new ArrayList<>();
      for (int j = 0; j < columns; j++) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < equations; i++) {
          if (random.nextInt(equations) < 2) {
            rows.add(i);
          }
        }
        unknowns.add(rows.isEmpty() ? List.of(random.nextInt(equations)) : rows);
      }
      Pattern p = pattern(equations, unknowns);
      isMatching(p, new Matching(p), largest(equations, unknowns, 0, 0));
    }
  }

  /** Tries all: the unknowns in turn take any free equation or none. */
  private static int largest(int equations, List<List<Integer>> unknowns, int unknown, int taken) {
    if (unknown == unknowns.size()) {
      return 0;
    }
    int best = largest(equations, unknowns, unknown + 1, taken);
    for (int i : unknowns.get(unknown)) {
      if ((taken >> i & 1) == 0) {
        best = Math.max(best, 1 + largest(equations, unknowns, unknown + 1, taken | 1 << i));
      }
    }
    return best;
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 5, 7})
  void thePartsFollow(int equations) {
    Random random = new Random(100 + equations);
    for (int run = 0; run < 30; run++) {
      List<List<Integer>> unknowns = new ArrayList<>();
      for (int j = 0; j < equations; j++) {
        int first = random.nextInt(equations);
        int second = random.nextInt(equations);
        unknowns.add(first == second ? List.of(first) : List.of(first, second));
      }
      Pattern p = pattern(equations, unknowns);
      Order order = Order.of(p);
      int missing = equations - largest(equations, unknowns, 0, 0);
      int over = order.rowsOf(Order.OVER).length - order.columnsOf(Order.OVER).length;
      int under = order.columnsOf(Order.UNDER).length - order.rowsOf(Order.UNDER).length;
      assertThat(over).as("with the empty equations").isEqualTo(equations + missing);
      assertThat(under).isEqualTo(missing);
      assertThat(order.row).hasSameSizeAs(order.column);
    }
  }
}
