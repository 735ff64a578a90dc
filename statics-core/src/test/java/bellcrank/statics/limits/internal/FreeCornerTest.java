package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsCoverage;
import org.junit.jupiter.api.Test;

/** What is found without the library is what the library finds. */
class FreeCornerTest {

  private static final double[] FIRST = {1, 0};

  /** Two variables; each row is two multiples and a limit. */
  private static Program program(double[]... rows) {
    Program program = new Program(2);
    for (double[] row : rows) {
      program.atMost(new double[] {row[0], row[1]}, row[2]);
    }
    return program;
  }

  private static double[] row(double... numbers) {
    return numbers;
  }

  /** x + y ≤ 2 and x − y ≤ 1 meet in (1.5, 0.5), far from x + 2·y ≤ 6. */
  @Test
  void twoRowsThatMeetAreTheCorner() {
    FreeCorner corner = new FreeCorner(2);

    assertThat(corner.find(program(row(1, 1, 2), row(1, -1, 1), row(0.5, 1, 3)), FIRST)).isTrue();
    assertThat(corner.point()).containsExactly(row(1.5, 0.5), within(1e-15));
  }

  @Test
  void aVariableThatTheSumDoesNotAskForStays() {
    FreeCorner corner = new FreeCorner(2);

    assertThat(corner.find(program(row(1, 0, 2), row(0, 1, 3)), FIRST)).isTrue();
    assertThat(corner.point()).containsExactly(2, 0);
    assertThat(corner.find(program(row(-4, 0, 2), row(0, 1, 3)), row(-1, 0))).isTrue();
    assertThat(corner.point()).containsExactly(-0.5, 0);
  }

  /**
   * y grows to y + z/2 ≤ 1, and falls again as z grows to 4: free, it is not stopped at zero. Then
   * x − 2·y − 1.5·z ≤ 1 lets x be 5.
   */
  @Test
  void aVariableThatARowGivesMayBeOfEitherSign() {
    Program program = new Program(3);
    program.atMost(new double[] {1, -2, -1.5}, 1);
    program.atMost(new double[] {0, 1, 0.5}, 1);
    program.atMost(new double[] {0, 0, 1}, 4);
    FreeCorner corner = new FreeCorner(3);

    assertThat(corner.find(program, new double[] {1, 0, 0})).isTrue();
    assertThat(corner.point()).containsExactly(row(5, -1, 4), within(1e-14));
  }

  /** x meets x + y ≤ 1 first, y falls to 2·x + y ≤ 3, and then the first row is in the way only. */
  @Test
  void aRowThatHasToBeLeftAgainIsLeftToTheLibrary() {
    Program program = program(row(1, 1, 1), row(2, 1, 3), row(0, -1, 5));

    assertThat(new FreeCorner(2).find(program, FIRST)).isFalse();
    assertThat(Simplex.maximize(program, FIRST).value).isCloseTo(4, within(1e-12));
  }

  @Test
  void whatTheLibraryHasToTellIsLeftToIt() {
    FreeCorner corner = new FreeCorner(2);

    // zeros do not keep the second row
    assertThat(corner.find(program(row(1, 0, 2), row(-1, 0, -1)), FIRST)).isFalse();
    // nothing stops x
    assertThat(corner.find(program(row(-1, 0, 2), row(0, 1, 3)), FIRST)).isFalse();
    // a row that has to be met
    Program met = program(row(1, 0, 2));
    met.equal(new double[] {0, 1}, 0);
    assertThat(corner.find(met, FIRST)).isFalse();
    // x is stopped by a row that barely has it
    assertThat(corner.find(program(row(1e-5, 1, 0), row(1, 1, 1), row(0, -1, 3)), FIRST)).isFalse();
  }

  /** The numbers of a program with some rows: multiples of the variables, then the limit. */
  record Numbers(int variables, List<Double> entries) {

    Program program() {
      Program program = new Program(variables);
      int width = variables + 1;
      for (int k = 0; k + width <= entries.size(); k += width) {
        double[] row = new double[variables];
        for (int j = 0; j < variables; j++) {
          row[j] = entries.get(k + j);
        }
        // a few limits below zero, so that zeros are no point to begin with
        program.atMost(row, entries.get(k + variables) + 0.95);
      }
      return program;
    }
  }

  @Provide
  Arbitrary<Numbers> numbers() {
    Arbitrary<Integer> variables = Arbitraries.integers().between(1, 6);
    Arbitrary<Integer> rows = Arbitraries.integers().between(2, 20);
    // quarters, so that ties and zeros come up on purpose
    Arbitrary<Boolean> grid = Arbitraries.of(true, false);
    return Combinators.combine(variables, rows, grid)
        .flatAs(
            (n, m, rounded) ->
                Arbitraries.integers()
                    .between(-1000, 1000)
                    .map(k -> rounded ? Math.rint(k / 250.0) / 4 : k / 1000.0)
                    .list()
                    .ofSize((n + 1) * m)
                    .map(entries -> new Numbers(n, entries)));
  }

  @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
  void whatIsFoundIsWhatTheLibraryFinds(@ForAll("numbers") Numbers numbers) {
    Program program = numbers.program();
    double[] objective = new double[numbers.variables()];
    objective[numbers.variables() - 1] = 1;
    FreeCorner corner = new FreeCorner(numbers.variables());
    boolean found = corner.find(program, objective);
    Statistics.label("found").collect(found);
    Statistics.label("found")
        .coverage(
            (StatisticsCoverage coverage) -> {
              coverage.check(true).percentage(p -> p > 10);
              coverage.check(false).percentage(p -> p > 10);
            });
    if (!found) {
      return;
    }
    Optimum best = Simplex.maximize(program, objective);
    double number = corner.point()[numbers.variables() - 1];
    assertThat(best.kind).isEqualTo(Optimum.Kind.FOUND);
    assertThat(number).isCloseTo(best.value, within(1e-9 * (1 + Math.abs(best.value))));
    assertThat(program.miss(corner.point())).isLessThanOrEqualTo(Simplex.MISS);
  }
}
