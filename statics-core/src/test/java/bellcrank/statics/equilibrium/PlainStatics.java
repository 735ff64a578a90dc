package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.PlainUnknown.Push;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * The second opinion: equilibrium of a device by one dense matrix, moments about the world's
 * origin, singular values by another library. It shares nothing with the library under test but the
 * model.
 */
final class PlainStatics {

  private static final double RANK = 1e-10;

  private final Device device;
  private final List<PlainUnknown> unknowns;
  private final Map<String, Integer> firstRow = new HashMap<>();
  private final double[] b;
  private final double[] x;
  private final Factor forces;
  private final Factor motions;
  private final Factor connectionMotions;
  private final double scale;
  private final double leftOver;
  private int rows;

  private PlainStatics(Device device, LoadCase loadCase, Pose pose) {
    this.device = device;
    unknowns = PlainConnections.of(device, pose);
    for (Member member : device.members()) {
      firstRow.put(member.name(), rows);
      rows += 3;
    }
    for (Joint joint : device.joints()) {
      firstRow.put(joint.name(), rows);
      rows += 2;
    }
    for (Connection connection : device.connections()) {
      // a pin is always a particle here, even one that goes into the ground
      if (connection instanceof Pin pin) {
        firstRow.put(PlainConnections.PIN + pin.name(), rows);
        rows += 2;
      }
    }
    double size = 0;
    b = new double[rows];
    for (Push push : PlainLoads.of(device, loadCase, pose)) {
      double[] column = new double[rows];
      add(push, column);
      for (int i = 0; i < rows; i++) {
        b[i] -= column[i];
        size += Math.abs(column[i]);
      }
    }
    forces = new Factor(matrix(PlainUnknown::forces, false), rows, unknowns.size());
    boolean lossy = unknowns.stream().anyMatch(one -> one.forces() != one.motions());
    int connections = (int) unknowns.stream().filter(one -> !one.sought()).count();
    motions =
        lossy ? new Factor(matrix(PlainUnknown::motions, false), rows, unknowns.size()) : forces;
    connectionMotions =
        connections < unknowns.size()
            ? new Factor(matrix(PlainUnknown::motions, true), rows, connections)
            : motions;
    x = forces.solve(b);
    double left = 0;
    for (int i = 0; i < rows; i++) {
      double sum = -b[i];
      for (int j = 0; j < x.length; j++) {
        sum += forces.matrix.getEntry(i, j) * x[j];
      }
      left = Math.max(left, Math.abs(sum));
    }
    scale = size;
    leftOver = size > 0 ? left / size : 0;
  }

  static PlainStatics of(Device device) {
    return of(device, device.cases().get(0), Pose.DRAWN);
  }

  static PlainStatics of(Device device, LoadCase loadCase, Pose pose) {
    return new PlainStatics(device, loadCase, pose);
  }

  private void add(Push push, double[] column) {
    Integer row = firstRow.get(push.body());
    if (row == null) {
      return; // the ground takes anything
    }
    column[row] += push.fx();
    column[row + 1] += push.fy();
    if (device.members().stream().anyMatch(member -> member.name().equals(push.body()))) {
      column[row + 2] += push.momentAboutOrigin() / device.size();
    }
  }

  private RealMatrix matrix(Function<PlainUnknown, List<Push>> which, boolean withoutSought) {
    int n = Math.max(1, Math.max(rows, unknowns.size()));
    RealMatrix matrix = new Array2DRowRealMatrix(n, n);
    int j = 0;
    for (PlainUnknown unknown : unknowns) {
      if (withoutSought && unknown.sought()) {
        continue;
      }
      double[] column = new double[n];
      which.apply(unknown).forEach(push -> add(push, column));
      matrix.setColumn(j++, column);
    }
    return matrix;
  }

  List<PlainUnknown> unknowns() {
    return unknowns;
  }

  /** Whether all ranks and the question of balance stand clear of rounding. */
  boolean isClear() {
    return forces.clear
        && motions.clear
        && connectionMotions.clear
        && !(leftOver > 1e-11 && leftOver < 1e-6);
  }

  boolean isBalanced() {
    return leftOver <= 1e-9;
  }

  boolean isHeld() {
    return forces.rank == rows;
  }

  int redundancy() {
    return unknowns.size() - forces.rank;
  }

  /** Motions left although sought efforts hold. */
  int freedoms() {
    return rows - motions.rank;
  }

  /** Motions left by the connections alone. */
  int mobility() {
    return rows - connectionMotions.rank;
  }

  boolean isDetermined(int unknown) {
    return forces.shareOfNullSpace(unknown) <= 1e-8;
  }

  /** Whether a self-stress reaches the unknown so little that opinions may differ. */
  boolean isAllButDetermined(int unknown) {
    double share = forces.shareOfNullSpace(unknown);
    return share > 1e-11 && share < 1e-6;
  }

  double value(int unknown) {
    return x[unknown] * unknowns.get(unknown).unit();
  }

  /** Largest of the sum of the loads and the unknowns, in N. */
  double forceScale() {
    double largest = scale;
    for (double value : x) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  /** Singular values of a matrix that is padded with zeros to a square one. */
  private static final class Factor {

    private final RealMatrix matrix;
    private final SingularValueDecomposition svd;
    private final double[] singular;
    private final int columns;
    private final int rank;
    private final boolean clear;

    Factor(RealMatrix matrix, int rows, int columns) {
      this.matrix = matrix;
      this.columns = columns;
      svd = new SingularValueDecomposition(matrix);
      singular = svd.getSingularValues();
      double bound = RANK * singular[0];
      int found = 0;
      boolean apart = true;
      for (double value : singular) {
        found += value > bound ? 1 : 0;
        apart &= !(value > 1e-12 * singular[0] && value < 1e-6 * singular[0]);
      }
      rank = Math.min(found, Math.min(rows, columns));
      clear = apart;
    }

    double[] solve(double[] b) {
      double[] x = new double[columns];
      for (int k = 0; k < rank; k++) {
        double sum = 0;
        for (int i = 0; i < b.length; i++) {
          sum += svd.getU().getEntry(i, k) * b[i];
        }
        for (int j = 0; j < columns; j++) {
          x[j] += svd.getV().getEntry(j, k) * sum / singular[k];
        }
      }
      return x;
    }

    double shareOfNullSpace(int column) {
      double sum = 0;
      for (int k = rank; k < singular.length; k++) {
        double value = svd.getV().getEntry(column, k);
        sum += value * value;
      }
      // vectors of the padding columns have no share in real ones
      return Math.sqrt(sum);
    }
  }
}
