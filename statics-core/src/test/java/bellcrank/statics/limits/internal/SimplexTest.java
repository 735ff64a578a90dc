package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Programs of few and of many variables. */
class SimplexTest {

  private static double[] unit(int variables, int which, double value) {
    double[] row = new double[variables];
    row[which] = value;
    return row;
  }

  /** Variables between −1 and k + 1, all but the first, which has no upper end; one sum of all. */
  private static Program box(int variables) {
    Program program = new Program(variables);
    double[] all = new double[variables];
    Arrays.fill(all, -1);
    program.atMost(all, 2.0 * variables);
    for (int k = 0; k < variables; k++) {
      program.atMost(unit(variables, k, -2), 2);
      if (k > 0) {
        program.atMost(unit(variables, k, 3), 3.0 * (k + 1));
      }
    }
    return program;
  }

  @Test
  void aSumWithoutEndIsToldOverManyVariablesToo() {
    for (int variables : new int[] {3, 60}) {
      Program program = box(variables);
      int rows = program.size();

      assertThat(Simplex.maximize(program, unit(variables, 0, 1)).kind)
          .isEqualTo(Optimum.Kind.UNBOUNDED);
      assertThat(program.size()).isEqualTo(rows);
      assertThat(Simplex.maximize(program, unit(variables, 2, 5)).value)
          .isCloseTo(15, within(1e-9));
      assertThat(Simplex.maximize(program, unit(variables, 0, -5)).value)
          .isCloseTo(5, within(1e-9));
    }
  }

  @Test
  void oneSolverServesOneProgramAfterTheOther() {
    Simplex simplex = new Simplex();
    Program program = new Program(2, 2);
    for (int k = 1; k <= 4; k++) {
      program.clear();
      double[] row = program.blank();
      row[0] = k;
      row[1] = 1;
      program.atMost(row, 2.0 * k);
      program.atMost(unit(2, 1, -1), k % 2 == 0 ? 0 : 1);
      program.equal(unit(2, 1, 1), 1 - k % 2);

      Optimum best = simplex.greatest(program, unit(2, 0, 1));
      assertThat(best.value).isCloseTo((2.0 * k - (1 - k % 2)) / k, within(1e-9));
    }
  }

  @Test
  void noPointIsNone() {
    Program program = new Program(1);
    program.atMost(unit(1, 0, 1), -1);
    program.atMost(unit(1, 0, -1), 0);

    assertThat(Simplex.maximize(program, unit(1, 0, 1)).kind).isEqualTo(Optimum.Kind.INFEASIBLE);
  }

  /** A row without variables asks a number alone to be large enough, but not beyond rounding. */
  @Test
  void aRowWithoutVariablesStillHasToHold() {
    for (double limit : new double[] {1, 0, -1e-12, -5e-10, -1e-9}) {
      assertThat(kindWithEmptyRow(limit)).isEqualTo(Optimum.Kind.FOUND);
    }
    for (double limit : new double[] {-1, -1e-6, -2e-9}) {
      assertThat(kindWithEmptyRow(limit)).isEqualTo(Optimum.Kind.INFEASIBLE);
    }
  }

  private static Optimum.Kind kindWithEmptyRow(double limit) {
    Program program = new Program(2);
    program.atMost(unit(2, 0, 1), 3);
    program.atMost(new double[2], limit);
    return Simplex.maximize(program, unit(2, 0, 1)).kind;
  }

  /** What is as small as rounding is told as it is, where a variable is asked. */
  @Test
  void aSmallEndIsNoZero() {
    Program program = new Program(2);
    program.atMost(unit(2, 0, 1), 4e-10);
    program.atMost(unit(2, 1, 1), 0);

    assertThat(Simplex.maximize(program, unit(2, 0, 1)).value).isCloseTo(4e-10, within(1e-16));
  }

  /** −2·x = −6 alone, and beside x ≤ 3 or x ≤ 2.9. */
  @Test
  void anEquationFixesOneVariable() {
    for (double sense = -1; sense <= 1; sense += 2) {
      Program program = new Program(1);
      program.equal(unit(1, 0, -2), -6);
      assertThat(Simplex.maximize(program, unit(1, 0, sense)).value)
          .isCloseTo(sense * 3, within(1e-12));
      program.atMost(unit(1, 0, 1), 3);
      assertThat(Simplex.maximize(program, unit(1, 0, sense)).value)
          .isCloseTo(sense * 3, within(1e-12));
      program.atMost(unit(1, 0, 1), 2.9);
      assertThat(Simplex.maximize(program, unit(1, 0, sense)).kind)
          .isEqualTo(Optimum.Kind.INFEASIBLE);
    }
  }
}
