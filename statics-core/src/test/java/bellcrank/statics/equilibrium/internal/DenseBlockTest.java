package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.junit.jupiter.api.Test;

class DenseBlockTest {

  private static boolean regular(double[][] rows) {
    LUDecompositionAlt_DDRM factors = new LUDecompositionAlt_DDRM();
    factors.decompose(new DMatrixRMaj(rows));
    return DenseBlock.pivotsAbove(factors, rows.length, 1e-14);
  }

  @Test
  void aRegularMatrixHasItsPivotsAboveTheBound() {
    assertThat(regular(new double[][] {{0, 1, 2}, {1, 0, 1}, {2, 1, 0}})).isTrue();
  }

  @Test
  void twoEqualRowsAreFoundAlthoughTheLibraryAcceptsThem() {
    assertThat(regular(new double[][] {{1, 1}, {1, 1}})).isFalse();
  }

  @Test
  void rowsThatDifferByRoundingOnlyCountAsEqual() {
    assertThat(regular(new double[][] {{1, 1}, {1, 1 + 1e-15}})).isFalse();
  }
}
