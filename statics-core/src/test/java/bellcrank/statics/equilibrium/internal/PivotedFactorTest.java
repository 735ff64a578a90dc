package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRPDecomposition_F64;
import org.junit.jupiter.api.Test;

/** Qᵀ is applied as the reflections say, and R solves what it should. */
class PivotedFactorTest {

  private static DMatrixRMaj sparse(Random random, int rows, int columns, int dependent) {
    DMatrixRMaj a = new DMatrixRMaj(rows, columns);
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        a.set(row, column, random.nextInt(3) == 0 ? random.nextGaussian() : 0);
      }
    }
    for (int k = 0; k < dependent; k++) {
      for (int row = 0; row < rows; row++) {
        a.set(row, k, 2 * a.get(row, columns - 1) - a.get(row, columns - 2 - k));
      }
    }
    return a;
  }

  @Test
  void reflectionsAreThoseOfTheWholeMatrix() {
    Random random = new Random(3);
    for (int k = 0; k < 300; k++) {
      int rows = 1 + random.nextInt(9);
      int columns = 4 + random.nextInt(9);
      DMatrixRMaj a = sparse(random, rows, columns, k % 3 == 0 ? 1 : 0);
      QRPDecomposition_F64<DMatrixRMaj> whole = DecompositionFactory_DDRM.qrp(rows, columns);
      assertThat(whole.decompose(a.copy())).isTrue();
      DMatrixRMaj q = whole.getQ(new DMatrixRMaj(1, 1), false);
      PivotedFactor factor = new PivotedFactor(a.copy());
      double[] load = random.doubles(rows).toArray();
      double[] turned = factor.turned(load);
      for (int i = 0; i < rows; i++) {
        double sum = 0;
        for (int row = 0; row < rows; row++) {
          sum += q.get(row, i) * load[row];
        }
        assertThat(turned[i]).isCloseTo(sum, within(1e-12));
      }
      solves(a, factor, load, turned);
    }
  }

  /** What is left of a load is what the factor says is left. */
  private static void solves(DMatrixRMaj a, PivotedFactor own, double[] load, double[] turned) {
    int rank = own.rank(1e-11);
    double left = 0;
    for (int i = rank; i < load.length; i++) {
      left = Math.hypot(left, turned[i]);
    }
    double[] x = own.solved(rank, turned.clone());
    double miss = 0;
    for (int row = 0; row < load.length; row++) {
      double sum = -load[row];
      for (int column = 0; column < x.length; column++) {
        sum += a.get(row, column) * x[column];
      }
      miss = Math.hypot(miss, sum);
    }
    assertThat(miss).isCloseTo(left, within(1e-9));
  }

  @Test
  void nothingHasNoRank() {
    assertThat(new PivotedFactor(new DMatrixRMaj(3, 2)).rank(1e-11)).isZero();
    assertThat(new PivotedFactor(new DMatrixRMaj(0, 2)).rank(1e-11)).isZero();
    assertThat(new PivotedFactor(new DMatrixRMaj(3, 0)).turned(new double[] {1, 2, 3}))
        .containsExactly(1, 2, 3);
  }

  @Test
  void oneStorageServesOneMatrixAfterTheOther() {
    Random random = new Random(8);
    PivotedFactor again = new PivotedFactor(sparse(random, 5, 7, 0));
    for (int k = 0; k < 50; k++) {
      DMatrixRMaj a = k % 10 == 9 ? new DMatrixRMaj(5, 7) : sparse(random, 5, 7, k % 2);
      PivotedFactor anew = new PivotedFactor(a);
      again.take(a);
      double[] load = random.doubles(5).toArray();

      assertThat(again.rank(1e-11)).isEqualTo(anew.rank(1e-11));
      assertThat(again.turned(load)).containsExactly(anew.turned(load));
      if (k % 10 == 9) {
        assertThat(again.rank(1e-11)).isZero();
        assertThat(again.turned(load)).containsExactly(load);
      }
    }
  }

  @Test
  void columnsBeyondTheRankAreSquareToTheMatrix() {
    Random random = new Random(9);
    DMatrixRMaj a = sparse(random, 9, 6, 2);
    PivotedFactor factor = new PivotedFactor(a);
    int rank = factor.rank(1e-11);
    assertThat(rank).isLessThan(9);
    for (int k = rank; k < 9; k++) {
      double[] q = factor.q(k);
      double length = 0;
      for (double entry : q) {
        length = Math.hypot(length, entry);
      }
      assertThat(length).isCloseTo(1, within(1e-12));
      for (int column = 0; column < 6; column++) {
        double sum = 0;
        for (int row = 0; row < 9; row++) {
          sum += q[row] * a.get(row, column);
        }
        assertThat(sum).isCloseTo(0, within(1e-12));
      }
    }
  }
}
