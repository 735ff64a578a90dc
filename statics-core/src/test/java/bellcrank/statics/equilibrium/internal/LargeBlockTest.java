package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** One block so large that it is solved sparsely. */
class LargeBlockTest {

  private static final int MEMBERS = 70;

  /** A closed ring of pinned members, each on one roller: all unknowns hang together. */
  private static Device ring() {
    DeviceBuilder ring = Device.named("ring");
    Random random = new Random(4);
    for (int i = 0; i < MEMBERS; i++) {
      double angle = 2 * Math.PI * i / MEMBERS;
      double radius = 3 + 0.4 * random.nextDouble();
      ring.point("P" + i, radius * Math.cos(angle), radius * Math.sin(angle));
    }
    for (int i = 0; i < MEMBERS; i++) {
      ring.member("m" + i, "P" + i, "P" + (i + 1) % MEMBERS);
    }
    for (int i = 0; i < MEMBERS; i++) {
      int next = (i + 1) % MEMBERS;
      ring.pin("pin " + i, "P" + next, "m" + i, "m" + next);
      Direction push = Direction.ofAngle(6 * random.nextDouble());
      ring.roller("roller " + i, "P" + i, "m" + i, "ground", push);
      ring.force("load " + i, "m" + i, "P" + i, Vector.of(random.nextDouble(), -1));
    }
    return ring.build();
  }

  @Test
  void itIsSolvedSparselyAndGivesTheDenseAnswer() {
    Device device = ring();
    assertThat(Prepared.of(device).largestBlock()).isGreaterThan(BlockSolver.LARGEST_DENSE);
    Drawn drawn = Drawn.of(device);
    assertThat(drawn.order().largestBlock).isGreaterThan(BlockSolver.LARGEST_DENSE);
    int n = drawn.equations().rows;
    double[] b = new double[n];
    Random random = new Random(5);
    for (int i = 0; i < n; i++) {
      b[i] = random.nextDouble() - 0.5;
    }
    OrderedRows rows = drawn.rows();
    BlockSolver solver = drawn.solver(rows);
    assertThat(solver.factor()).isTrue();
    double[] x = new double[n];
    solver.solve(b, x);
    double[] dense =
        new LUDecomposition(new Array2DRowRealMatrix(drawn.dense()))
            .getSolver()
            .solve(new ArrayRealVector(b))
            .toArray();
    double largest = 0;
    for (double value : dense) {
      largest = Math.max(largest, Math.abs(value));
    }
    assertThat(x).usingComparatorWithPrecision(1e-9 * largest).containsExactly(dense);
    // factors are kept and renewed
    rows.take(drawn.equations());
    assertThat(solver.factor()).isTrue();
    solver.solve(b, x);
    assertThat(x).usingComparatorWithPrecision(1e-9 * largest).containsExactly(dense);
  }

  @Test
  void theBalanceOfTheRingCloses() {
    Balance balance = Balance.of(ring());
    assertThat(balance.outcome().words()).isEqualTo("in balance");
    assertThat(balance.residual()).isPositive().isLessThan(1e-12);
    Prepared prepared = Prepared.of(ring());
    assertThat(prepared.isDeterminate()).isTrue();
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, LoadCase.ALL_LOADS)).isTrue();
    assertThat(buffer.residual()).isPositive().isLessThan(1e-12);
  }

  @Test
  void renumberingKeepsNeighboursClose() {
    Drawn drawn = Drawn.of(ring());
    Order order = drawn.order();
    int block = 0;
    while (order.blockStart[block + 1] - order.blockStart[block] != order.largestBlock) {
      block++;
    }
    int from = order.blockStart[block];
    int size = order.largestBlock;
    int[] numbers = new CuthillMcKee(drawn.rows(), from, size).newNumbers();
    assertThat(numbers.clone()).doesNotHaveDuplicates().hasSize(size);
    int widest = 0;
    Pattern p = order.pattern;
    for (int i = 0; i < size; i++) {
      int row = order.row[from + i];
      for (int k = p.rowStart[row]; k < p.rowStart[row + 1]; k++) {
        int j = order.position[p.rowColumn[k]] - from;
        if (j >= 0 && j < size) {
          assertThat(numbers[i]).isBetween(0, size - 1);
          widest = Math.max(widest, Math.abs(numbers[i] - numbers[j]));
        }
      }
    }
    // two arms of the ring side by side, a few unknowns for each member
    assertThat(widest).isLessThan(size / 6);
  }
}
