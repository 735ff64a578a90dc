package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Programs of independent parts come out as they do as a whole. */
class IndependentPartsTest {

  private static final int PARTS = 6;
  private static final int EACH = 4;

  /** Boxes cut by random rows; variables of a part are not side by side. */
  private static Program some(Random random) {
    Program program = new Program(PARTS * EACH);
    for (int j = 0; j < program.variables(); j++) {
      program.atMost(row(program, j, 1), 5);
      program.atMost(row(program, j, -1), 3);
    }
    for (int k = 0; k < 4 * PARTS; k++) {
      double[] row = new double[program.variables()];
      for (int i = 0; i < EACH; i++) {
        row[k % PARTS + i * PARTS] = 2 * random.nextDouble() - 1;
      }
      if (k < PARTS) {
        program.equal(row, random.nextDouble());
      } else {
        program.atMost(row, random.nextDouble());
      }
    }
    return program;
  }

  private static double[] row(Program program, int variable, double multiple) {
    double[] row = new double[program.variables()];
    row[variable] = multiple;
    return row;
  }

  private static void same(Program program, double[] objective) {
    Optimum whole = new Simplex().greatest(program, objective);
    Optimum parts = IndependentParts.maximize(program, objective);
    assertThat(parts.kind).isEqualTo(whole.kind);
    if (whole.isFound()) {
      assertThat(parts.value).isCloseTo(whole.value, within(1e-9));
      assertThat(program.miss(parts.x)).isLessThan(1e-9);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aGreatestSumIsTheSumOfTheGreatest(long seed) {
    Random random = new Random(seed);
    double[] objective = random.doubles(PARTS * EACH, -1, 1).toArray();
    same(some(random), objective);
  }

  @Test
  void oneSumWithoutEndIsEnough() {
    Program program = some(new Random(9));
    Program longer = new Program(program.variables() + 1);
    for (int k = 0; k < program.size(); k++) {
      longer.atMost(Arrays.copyOf(program.row(k), longer.variables()), program.limit(k));
    }
    same(longer, row(longer, longer.variables() - 1, 1));
    same(longer, row(longer, 0, 1));
    assertThat(IndependentParts.maximize(longer, row(longer, longer.variables() - 1, -1)).kind)
        .isEqualTo(Optimum.Kind.UNBOUNDED);
  }

  @Test
  void oneContradictionIsEnough() {
    Program program = some(new Random(10));
    program.atMost(row(program, 3, 1), -4);
    same(program, row(program, 0, 1));
    // even where another part has no end, and where no variable takes part in it
    Program empty = new Program(2);
    empty.atMost(new double[2], -1);
    assertThat(IndependentParts.maximize(empty, new double[] {1, 1}).kind)
        .isEqualTo(Optimum.Kind.INFEASIBLE);
  }
}
