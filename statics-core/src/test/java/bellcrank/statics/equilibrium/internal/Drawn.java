package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import java.util.stream.IntStream;

/** The equations of a device as drawn, and their order. */
record Drawn(Assembly assembly, Equations equations, Pattern pattern, Order order) {

  static Drawn of(Device device) {
    Assembly assembly = Assembly.of(device);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    double[] centre = new double[2 * assembly.memberCount()];
    MomentCentres.choose(assembly, actions, centre);
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, centre);
    Pattern pattern = new Pattern(equations, assembly.scale().zero(), equations.columns);
    return new Drawn(assembly, equations, pattern, Order.of(pattern));
  }

  /** The square part row after row, with its numbers. */
  OrderedRows rows() {
    OrderedRows rows = new OrderedRows(order);
    rows.take(equations);
    return rows;
  }

  BlockSolver solver(OrderedRows rows) {
    return new BlockSolver(rows, assembly.scale().zero());
  }

  double[][] dense() {
    double[][] a = new double[equations.rows][equations.columns];
    for (int j = 0; j < equations.columns; j++) {
      for (int k = equations.start[j]; k < equations.start[j + 1]; k++) {
        a[equations.row[k]][j] = equations.value[k];
      }
    }
    return a;
  }

  int[] allRows() {
    return IntStream.range(0, equations.rows).toArray();
  }

  int[] allColumns() {
    return IntStream.range(0, equations.columns).toArray();
  }

  /** Position of each unknown's block in the order of solution; −1 outside the square part. */
  int[] blockOfColumn() {
    int[] block = new int[pattern.columns];
    java.util.Arrays.fill(block, -1);
    for (int b = 0; b < order.blocks; b++) {
      for (int k = order.blockStart[b]; k < order.blockStart[b + 1]; k++) {
        block[order.column[k]] = b;
      }
    }
    return block;
  }
}
