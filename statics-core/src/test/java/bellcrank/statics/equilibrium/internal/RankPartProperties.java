package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.RandomDevices;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** Rank, null spaces and condition against another library. */
class RankPartProperties {

  @Provide
  Arbitrary<Device> small() {
    return RandomDevices.small();
  }

  @Provide
  Arbitrary<Device> mostlyHeld() {
    return RandomDevices.mostlyHeld();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void rankAndNullSpaces(@ForAll("small") Device device) {
    Drawn drawn = Drawn.of(device);
    double[][] a = drawn.dense();
    Assume.that(drawn.equations().columns > 0);
    double[] singular = singularValues(a);
    int rank = 0;
    for (double value : singular) {
      rank += value > 1e-10 * singular[0] ? 1 : 0;
      Assume.that(value < 1e-13 * singular[0] || value > 1e-7 * singular[0]);
    }
    RankPart part =
        new RankPart(
            drawn.equations(),
            drawn.allRows(),
            drawn.allColumns(),
            drawn.assembly().scale().zero(),
            RankPart.scratch(drawn.equations()));
    assertThat(part.rank).isEqualTo(rank);
    if (rank > 0) {
      assertThat(part.condition)
          .isCloseTo(singular[0] / singular[rank - 1], within(1e-4 * part.condition));
    }
    assertThat(part.rightNull()).hasSize(a[0].length - rank);
    assertThat(part.leftNull()).hasSize(a.length - rank);
    orthonormal(part.rightNull());
    orthonormal(part.leftNull());
    for (double[] vector : part.rightNull()) {
      for (double[] row : a) {
        assertThat(dot(row, vector)).isCloseTo(0, within(1e-10));
      }
    }
    for (double[] vector : part.leftNull()) {
      for (int j = 0; j < a[0].length; j++) {
        assertThat(dot(column(a, j), vector)).isCloseTo(0, within(1e-10));
      }
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void theEstimateOfTheConditionIsOfItsSize(@ForAll("mostlyHeld") Device device) {
    Drawn drawn = Drawn.of(device);
    Assume.that(drawn.order().isSquare());
    double[] singular = singularValues(drawn.dense());
    int n = singular.length;
    double condition = singular[0] / singular[n - 1];
    Assume.that(condition < 1e9);
    OrderedRows rows = drawn.rows();
    BlockSolver solver = drawn.solver(rows);
    assertThat(solver.factor()).isTrue();
    double estimate = ConditionEstimate.of(rows, solver, new double[n], new double[n]);
    assertThat(estimate).isGreaterThanOrEqualTo(1);
    // the norms differ by a factor of up to n, the probes see a random share
    assertThat(estimate).isBetween(condition / (30.0 * n), condition * 30);
  }

  private static double[] singularValues(double[][] a) {
    return new SingularValueDecomposition(new Array2DRowRealMatrix(a)).getSingularValues();
  }

  private static void orthonormal(List<double[]> vectors) {
    for (int i = 0; i < vectors.size(); i++) {
      for (int j = 0; j <= i; j++) {
        assertThat(dot(vectors.get(i), vectors.get(j))).isCloseTo(i == j ? 1 : 0, within(1e-10));
      }
    }
  }

  private static double[] column(double[][] a, int j) {
    double[] column = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      column[i] = a[i][j];
    }
    return column;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
