package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Blocks solved by their inverse give what blocks solved by a factor give. */
class InverseBlockTest {

  /** Blocks of one to seven unknowns, each leaning on those before. */
  private static Equations blocks(Random random, int[] sizes, double tie) {
    int n = 0;
    for (int size : sizes) {
      n += size;
    }
    double[][] a = new double[n][n];
    int from = 0;
    for (int size : sizes) {
      for (int i = from; i < from + size; i++) {
        for (int j = 0; j < from + size; j++) {
          a[i][j] = j >= from || random.nextInt(3) == 0 ? random.nextGaussian() : 0;
        }
        a[i][i] += 3;
      }
      from += size;
    }
    if (tie >= 0) {
      for (int j = 0; j < n; j++) {
        a[n - 1][j] = a[n - 2][j] + (j == n - 1 ? tie : 0);
      }
    }
    int[] start = new int[n + 1];
    int[] row = new int[n * n];
    double[] value = new double[n * n];
    int used = 0;
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        if (a[i][j] != 0) {
          row[used] = i;
          value[used++] = a[i][j];
        }
      }
      start[j + 1] = used;
    }
    return new Equations(n, start, row, value);
  }

  private static OrderedRows rows(Equations equations) {
    OrderedRows rows = new OrderedRows(Order.of(new Pattern(equations, 0, equations.columns)));
    rows.take(equations);
    return rows;
  }

  @Test
  void inversesAndFactorsAgree() {
    Random random = new Random(11);
    for (int k = 0; k < 200; k++) {
      Equations equations = blocks(random, new int[] {1, 2 + k % 4, 1, 7, 3}, -1);
      OrderedRows rows = rows(equations);
      BlockSolver byFactors = new BlockSolver(rows, 1e-14);
      BlockSolver byInverses = BlockSolver.byInverses(rows, 1e-14);
      assertThat(byFactors.factor()).isTrue();
      if (byInverses.factor()) {
        double[] b = random.doubles(equations.rows).toArray();
        double[] expected = new double[equations.columns];
        double[] x = new double[equations.columns];
        byFactors.solve(b, expected);
        byInverses.solve(b, x);
        double largest = 1;
        for (double value : expected) {
          largest = Math.max(largest, Math.abs(value));
        }
        assertThat(x).containsExactly(expected, within(1e-11 * largest));
      }
    }
  }

  @Test
  void nearlySingularBlocksAreRefused() {
    for (double tie : new double[] {0, 1e-15, 1e-5}) {
      OrderedRows rows = rows(blocks(new Random(5), new int[] {2, 3}, tie));

      assertThat(BlockSolver.byInverses(rows, 1e-14).factor()).as("tie " + tie).isFalse();
    }
  }
}
