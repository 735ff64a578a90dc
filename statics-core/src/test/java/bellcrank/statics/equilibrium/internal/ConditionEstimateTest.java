package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** The estimate of the condition, worked out again from its definition. */
class ConditionEstimateTest {

  /** Joints only, so that no choice of moment centres comes in. */
  private static Device truss() {
    DeviceBuilder truss =
        Device.named("truss")
            .point("A", 0, 0)
            .point("B", 2, 0.3)
            .point("C", 1.1, 1.7)
            .point("D", 3, 2)
            .point("far", -3, 0.4)
            .point("low", 0.2, -2)
            .point("side", 4, -1.5)
            .joint("A")
            .joint("B")
            .joint("C")
            .joint("D")
            .strut("1", End.of("A", "A"), End.of("ground", "far"))
            .strut("2", End.of("A", "A"), End.of("ground", "low"))
            .strut("3", End.of("A", "A"), End.of("B", "B"))
            .strut("4", End.of("B", "B"), End.of("ground", "side"))
            .strut("5", End.of("A", "A"), End.of("C", "C"))
            .strut("6", End.of("B", "B"), End.of("C", "C"))
            .strut("7", End.of("B", "B"), End.of("D", "D"))
            .strut("8", End.of("C", "C"), End.of("D", "D"))
            .force("load", "D", "D", Vector.of(3, -10));
    return truss.build();
  }

  /** Marsaglia's xorshift with 13, 17, 5. */
  private static final class Bits {
    private int bits = 0x2545F491;

    double next() {
      bits ^= bits << 13;
      bits ^= bits >>> 17;
      bits ^= bits << 5;
      return Math.sqrt(3) * bits / 2147483648.0;
    }
  }

  private static double estimate(double[][] a, double[][] probes) {
    double squares = 0;
    for (double[] row : a) {
      for (double value : row) {
        squares += value * value;
      }
    }
    DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(a)).getSolver();
    double largest = 0;
    for (double[] probe : probes) {
      largest = Math.max(largest, solver.solve(new ArrayRealVector(probe)).getNorm());
    }
    return Math.sqrt(squares) * largest / a.length;
  }

  @Test
  void inOrder() {
    Drawn drawn = Drawn.of(truss());
    int n = drawn.equations().rows;
    assertThat(n).isEqualTo(8);
    Bits bits = new Bits();
    double[][] probes = new double[ConditionEstimate.PROBES][n];
    for (double[] probe : probes) {
      for (int i = 0; i < n; i++) {
        probe[drawn.order().row[i]] = bits.next();
      }
    }
    OrderedRows rows = drawn.rows();
    BlockSolver solver = drawn.solver(rows);
    assertThat(solver.factor()).isTrue();
    double expected = estimate(drawn.dense(), probes);
    assertThat(expected).isGreaterThan(1);
    assertThat(ConditionEstimate.of(rows, solver, new double[n], new double[n]))
        .isCloseTo(expected, within(1e-9 * expected));
  }

  @Test
  void atOneGo() {
    Drawn drawn = Drawn.of(truss());
    Assembly assembly = drawn.assembly();
    int n = drawn.equations().rows;
    Bits bits = new Bits();
    double[] first = new double[n];
    double[] second = new double[n];
    for (int row = 0; row < n; row++) {
      first[row] = bits.next();
      second[row] = bits.next();
    }
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(placements, LoadCase.ALL_LOADS, loads);
    Optional<LinearSolution> small = SmallSystem.solve(assembly, actions, loads);
    double expected = estimate(drawn.dense(), new double[][] {first, second});
    assertThat(small.orElseThrow().condition()).isCloseTo(expected, within(1e-9 * expected));
  }

  @Test
  void nothingToSolveIsWellConditioned() {
    Drawn drawn = Drawn.of(Device.named("ring").point("P", 0, 0).joint("P").build());
    OrderedRows rows = drawn.rows();
    assertThat(ConditionEstimate.of(rows, drawn.solver(rows), new double[2], new double[0]))
        .isEqualTo(1);
  }
}
