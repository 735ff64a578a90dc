package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Searches of plain functions whose least value is known. */
class GoalSearchTest {

  private static final Aim AT_MOST = new Aim(false, 1);
  private static final Aim EQUAL = new Aim(true, 1);

  private static Best least(int numbers, View view, Aim... aims) {
    double[] start = new double[numbers];
    java.util.Arrays.fill(start, 0.5);
    Best best = GoalSearch.of(view, List.of(aims), start, 20_000);
    return best;
  }

  @Test
  void leastOfAParabola() {
    Best best = least(1, x -> Sight.of((x[0] - 0.3) * (x[0] - 0.3)));
    assertThat(best.place()[0]).isCloseTo(0.3, within(1e-7));
    assertThat(best.keeps()).isTrue();
  }

  @Test
  void aGoalStopsOneNumber() {
    Best best = least(1, x -> Sight.of(x[0], 0.123456789 - x[0]), AT_MOST);
    assertThat(best.place()[0]).isCloseTo(0.123456789, within(1e-11));
    assertThat(best.isUsedUp(0)).isTrue();
  }

  @Test
  void oneValueOfOneNumber() {
    Best best = least(1, x -> Sight.of(x[0], x[0] * x[0] - 0.5), EQUAL);
    assertThat(best.place()[0]).isCloseTo(Math.sqrt(0.5), within(1e-9));
    assertThat(best.keeps()).isTrue();
  }

  @Test
  void ofSeveralHollowsTheDeepest() {
    Best best = least(1, x -> Sight.of(Math.cos(20 * x[0]) + x[0]));
    assertThat(best.place()[0]).isCloseTo((Math.PI - Math.asin(0.05)) / 20, within(1e-6));
  }

  @Test
  void aNarrowWindowBetweenTwoGoals() {
    Best best = least(1, x -> Sight.of(-x[0], x[0] - 0.50124, 0.50123 - x[0]), AT_MOST, AT_MOST);
    assertThat(best.keeps()).isTrue();
    assertThat(best.place()[0]).isCloseTo(0.50124, within(1e-11));
  }

  @Test
  void whatCannotBeKeptIsMissedLeast() {
    Best best = least(1, x -> Sight.of(x[0], 1.2 - x[0]), AT_MOST);
    assertThat(best.keeps()).isFalse();
    assertThat(best.place()[0]).isEqualTo(1);
  }

  @Test
  void onlyPartOfTheRangeIsSeen() {
    Best best = least(1, x -> x[0] < Math.PI / 10 ? Sight.nothing() : Sight.of(x[0]));
    assertThat(best.place()[0]).isCloseTo(Math.PI / 10, within(1e-14));
  }

  @Test
  void nothingSeenAnywhere() {
    assertThat(least(1, x -> Sight.nothing()).isThere()).isFalse();
    assertThat(least(2, x -> Sight.nothing()).isThere()).isFalse();
  }

  /** Least x + y on x·y ≥ 0.16: both 0.4, by Lagrange's multipliers. */
  @Test
  void leastSumWithAProduct() {
    Best best = least(2, x -> Sight.of(x[0] + x[1], 0.16 - x[0] * x[1]), AT_MOST);
    assertThat(best.keeps()).isTrue();
    assertThat(best.place()).containsExactly(new double[] {0.4, 0.4}, within(1e-5));
    assertThat(best.place()[0] + best.place()[1]).isCloseTo(0.8, within(1e-9));
  }

  /** Greatest 3x + 2y under x + y ≤ 1, x ≤ 0.7: the corner (0.7, 0.3). */
  @Test
  void cornerOfALinearProgram() {
    Best best =
        least(
            2, x -> Sight.of(-3 * x[0] - 2 * x[1], x[0] + x[1] - 1, x[0] - 0.7), AT_MOST, AT_MOST);
    assertThat(best.place()).containsExactly(new double[] {0.7, 0.3}, within(1e-11));
    assertThat(best.isUsedUp(0)).isTrue();
    assertThat(best.isUsedUp(1)).isTrue();
  }

  /** Corner of two curves: x² + y² ≤ 0.5 and y ≥ 2x², greatest x: x² + 4x⁴ = 0.5. */
  @Test
  void cornerOfTwoCurves() {
    Best best =
        least(
            2,
            x -> Sight.of(-x[0], x[0] * x[0] + x[1] * x[1] - 0.5, 2 * x[0] * x[0] - x[1]),
            AT_MOST,
            AT_MOST);
    double square = (-1 + Math.sqrt(1 + 8)) / 8;
    assertThat(best.place()[0]).isCloseTo(Math.sqrt(square), within(1e-11));
    assertThat(best.place()[1]).isCloseTo(2 * square, within(1e-11));
  }

  /** The greatest of two cones with slanted valley: least at a kink inside. */
  @Test
  void kinkInside() {
    Best best =
        least(
            2,
            x -> {
              double a = x[0] - 0.37;
              double b = x[1] - 0.61;
              return Sight.of(Math.max(Math.abs(a + b), 10 * Math.abs(a - 2 * b)));
            });
    assertThat(best.place()).containsExactly(new double[] {0.37, 0.61}, within(1e-6));
  }

  /** Rosenbrock's valley (H. H. Rosenbrock, The Computer Journal 3 (1960), page 175). */
  @Test
  void curvedValley() {
    Best best =
        least(
            2,
            u -> {
              double x = 4 * u[0] - 2;
              double y = 4 * u[1] - 2;
              return Sight.of(100 * (y - x * x) * (y - x * x) + (1 - x) * (1 - x));
            });
    assertThat(best.place()).containsExactly(new double[] {0.75, 0.75}, within(1e-5));
  }

  /** Six hollows each way. */
  @Test
  void deepestOfManyHollows() {
    Best best =
        least(
            2,
            u -> {
              double x = 6 * (u[0] - 0.57);
              double y = 6 * (u[1] - 0.44);
              return Sight.of(
                  20
                      + x * x
                      - 10 * Math.cos(2 * Math.PI * x)
                      + y * y
                      - 10 * Math.cos(2 * Math.PI * y));
            });
    assertThat(best.place()).containsExactly(new double[] {0.57, 0.44}, within(1e-5));
  }

  /** Nearest point of a plane in four numbers: all move alike. */
  @Test
  void nearestPointWithOneValue() {
    Best best =
        least(
            4,
            x -> {
              double square = 0;
              double sum = 0;
              for (double one : x) {
                square += (one - 0.2) * (one - 0.2);
                sum += one;
              }
              return Sight.of(square, sum - 2);
            },
            EQUAL);
    assertThat(best.keeps()).isTrue();
    for (double one : best.place()) {
      assertThat(one).isCloseTo(0.5, within(1e-4));
    }
  }

  /** Half of the box is not seen, and the least value lies at its edge, a slanted line. */
  @Test
  void edgeOfWhatIsSeen() {
    Best best =
        least(2, x -> x[0] + 2 * x[1] < 1.1 ? Sight.nothing() : Sight.of(x[0] + 1.5 * x[1]));
    assertThat(best.place()[0] + 1.5 * best.place()[1]).isCloseTo(0.825, within(1e-4));
  }

  @Test
  void misses() {
    // two goals that exclude one another: one of them is kept
    Best best = least(2, x -> Sight.of(x[0], 0.9 - x[0] + 0 * x[1], x[0] - 0.4), AT_MOST, AT_MOST);
    assertThat(best.keeps()).isFalse();
    assertThat(best.place()[0]).isBetween(0.4 - 1e-9, 0.9 + 1e-9);
  }

  @Test
  void sameAgain() {
    View view = x -> Sight.of(Math.abs(x[0] - 0.2) + Math.sin(9 * x[1]), x[0] * x[1] - 0.1);
    assertThat(least(2, view, AT_MOST).place()).isEqualTo(least(2, view, AT_MOST).place());
  }

  @Test
  void cutShort() {
    Best best = GoalSearch.of(x -> Sight.of(x[0]), List.of(), new double[] {0.5, 0.5}, 100);
    assertThat(best.isCutShort()).isTrue();
    assertThat(best.looks()).isEqualTo(100);
    assertThat(best.isThere()).isTrue();
  }

  /** Over a third of the range has no end: what is kept is not read off that. */
  @Test
  void whatHasNoEndSpoilsNoSizes() {
    Best best =
        least(
            1,
            x -> {
              double multiple = x[0] > 0.6 ? Sight.ENDLESS : 3 * x[0];
              return Sight.of(x[0], 1.5 - multiple);
            },
            AT_MOST);
    assertThat(best.place()[0]).isCloseTo(0.5, within(1e-9));
  }
}
