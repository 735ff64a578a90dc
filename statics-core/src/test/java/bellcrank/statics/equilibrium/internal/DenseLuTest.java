package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseLuTest {

  private static final double ZERO = 1e-14;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 9, 40})
  void solvesWhatWasMultiplied(int n) {
    Random numbers = new Random(17L * n);
    int start = 5;
    int first = 3;
    double[] a = new double[start + n * n];
    double[] expected = new double[n];
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      expected[i] = numbers.nextDouble() - 0.5;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        a[start + i * n + j] = numbers.nextInt(3) == 0 ? 0 : numbers.nextDouble() - 0.5;
        b[i] += a[start + i * n + j] * expected[j];
      }
    }
    int[] exchanged = new int[first + n];

    assertThat(DenseLu.factor(a, start, n, exchanged, first, ZERO)).isTrue();
    DenseLu.solve(a, start, n, exchanged, first, b);

    for (int i = 0; i < n; i++) {
      assertThat(b[i]).isCloseTo(expected[i], within(1e-9));
    }
  }

  @Test
  void leavesTheRestOfTheArrayAlone() {
    double[] a = {7, 0, 2, 4, 0, 8};

    assertThat(DenseLu.factor(a, 1, 2, new int[2], 0, ZERO)).isTrue();

    assertThat(a[0]).isEqualTo(7);
    assertThat(a[5]).isEqualTo(8);
  }

  @Test
  void rowsAreExchangedForTheLargestPivot() {
    double[] a = {0, 2, 4, 1};
    int[] exchanged = new int[2];
    double[] b = {6, 11};

    assertThat(DenseLu.factor(a, 0, 2, exchanged, 0, ZERO)).isTrue();
    DenseLu.solve(a, 0, 2, exchanged, 0, b);

    assertThat(exchanged).containsExactly(1, 1);
    assertThat(b).containsExactly(2, 3);
  }

  @Test
  void equalRowsAreSingular() {
    assertThat(DenseLu.factor(new double[] {1, 1, 1, 1}, 0, 2, new int[2], 0, ZERO)).isFalse();
  }

  @Test
  void pivotOfRoundingIsSingular() {
    double[] a = {1, 1, 1, 1 + 1e-15};

    assertThat(DenseLu.factor(a.clone(), 0, 2, new int[2], 0, ZERO)).isFalse();
    assertThat(DenseLu.factor(a.clone(), 0, 2, new int[2], 0, 1e-16)).isTrue();
  }
}
