package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.function.Predicate;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRPDecomposition_F64;

/**
 * All forces that can balance loads on a device: f = f₀ + N·z, with z the forces that statics
 * leaves free. Friction couples of pins are among the forces. Which of the forces are free is
 * chosen by a rank-revealing factor, so z are forces of the device themselves.
 */
public final class ForceSpace {

  /** Diagonal entries of the factor below this share of the largest are zero. */
  private static final double RANK_TOLERANCE = 1e-11;

  private final Assembly assembly;
  private final Placements placements;
  private final Actions actions;
  private final double[] centre;
  private final int rows;
  private final int columns;
  private final int rank;
  private final int[] pivots;
  private final DMatrixRMaj q;
  private final DMatrixRMaj r;
  private final double[][] free;

  private ForceSpace(Device device, Pose pose) {
    assembly = Assembly.withDryPins(device);
    placements = assembly.placements();
    actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    // a dense factor gains nothing from moments about well-chosen points: all are about the middle
    centre = new double[2 * assembly.memberCount()];
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, centre);
    double zero = assembly.scale().zero();
    columns = equations.columns;
    int shafts = 0;
    for (Connection connection : device.connections()) {
      shafts += connection instanceof Pin pin && isShaft(pin) ? 1 : 0;
    }
    rows = equations.rows + shafts;
    DMatrixRMaj a = new DMatrixRMaj(Math.max(rows, 1), Math.max(columns, 1));
    for (int column = 0; column < columns; column++) {
      for (int k = equations.start[column]; k < equations.start[column + 1]; k++) {
        double value = equations.value[k];
        a.set(equations.row[k], column, Math.abs(value) > zero ? value : 0);
      }
    }
    balanceShafts(device, a, equations.rows);
    QRPDecomposition_F64<DMatrixRMaj> factor = DecompositionFactory_DDRM.qrp(a.numRows, a.numCols);
    if (!factor.decompose(a)) {
      throw new IllegalStateException("the factor of the equations was not found");
    }
    q = factor.getQ(new DMatrixRMaj(1, 1), false);
    r = factor.getR(new DMatrixRMaj(1, 1), false);
    pivots = factor.getColPivots();
    int values = columns == 0 ? 0 : Math.min(rows, columns);
    double bound = values == 0 ? 0 : Math.abs(r.get(0, 0)) * Math.max(RANK_TOLERANCE, 4 * zero);
    int counted = 0;
    while (counted < values && Math.abs(r.get(counted, counted)) > bound) {
      counted++;
    }
    rank = counted;
    free = new double[columns - rank][];
    for (int k = 0; k < free.length; k++) {
      free[k] = freed(k);
    }
  }

  /**
   * The forces of a device in a pose.
   *
   * @param device the device
   * @param pose where its bodies are
   * @return its forces
   */
  public static ForceSpace of(Device device, Pose pose) {
    return new ForceSpace(device, pose);
  }

  /** A dry pin that is a body of its own: its shaft turns freely unless friction holds it. */
  private boolean isShaft(Pin pin) {
    return pin.friction() > 0 && assembly.pinBody(pin.name()) >= 0;
  }

  /** Joints have no equation of moments; the shaft of a dry pin needs one. */
  private void balanceShafts(Device device, DMatrixRMaj a, int firstRow) {
    int row = firstRow;
    for (int i = 0; i < device.connections().size(); i++) {
      if (device.connections().get(i) instanceof Pin pin && isShaft(pin)) {
        for (int body = 0; body < pin.bodies().size(); body++) {
          a.set(row, assembly.coupleColumn(i, body), 1);
        }
        row++;
      }
    }
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  /** Number of equations, those of the shafts of dry pins with them. */
  public int rows() {
    return rows;
  }

  /** Number of free forces. */
  public int freedom() {
    return columns - rank;
  }

  /** Number of independent conditions that loads must fulfil to be balanced at all. */
  public int conditions() {
    return rows - rank;
  }

  /**
   * What one unit of a free force adds to the forces.
   *
   * @param which which one
   * @return by unknowns; shared, not to be changed
   */
  public double[] free(int which) {
    return free[which];
  }

  private double[] freed(int which) {
    double[] y = new double[rank];
    for (int i = 0; i < rank; i++) {
      y[i] = -r.get(i, rank + which);
    }
    double[] f = scattered(y);
    f[pivots[rank + which]] = 1;
    return f;
  }

  /** Solves the triangle and puts each force where it belongs. */
  private double[] scattered(double[] y) {
    double[] f = new double[columns];
    for (int i = rank - 1; i >= 0; i--) {
      double sum = y[i];
      for (int j = i + 1; j < rank; j++) {
        sum -= r.unsafe_get(i, j) * y[j];
      }
      y[i] = sum / r.unsafe_get(i, i);
      f[pivots[i]] = y[i];
    }
    return f;
  }

  /**
   * Forces that balance loads as far as they can be balanced, with all free forces zero.
   *
   * @param load right side, of {@link #loads} and the like
   * @return by unknowns
   */
  public double[] response(double[] load) {
    double[] y = new double[rank];
    for (int i = 0; i < rank; i++) {
      y[i] = dot(i, load);
    }
    return scattered(y);
  }

  /**
   * What is left of loads that no forces can balance.
   *
   * @param load right side
   * @return one number for each condition; all zero if the loads can be balanced
   */
  public double[] unbalanced(double[] load) {
    double[] left = new double[conditions()];
    for (int i = 0; i < left.length; i++) {
      left[i] = dot(rank + i, load);
    }
    return left;
  }

  private double dot(int column, double[] load) {
    double sum = 0;
    for (int row = 0; row < rows; row++) {
      sum += q.unsafe_get(row, column) * load[row];
    }
    return sum;
  }

  /**
   * Right side of some of the given loads.
   *
   * @param loadCase factors
   * @param which which loads, by name
   * @return by equations, scaled
   */
  public double[] loads(LoadCase loadCase, Predicate<String> which) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    add(loadCase, which, sum);
    return rightSide(sum);
  }

  /** Sum of the sizes of the given loads of a case in N. */
  public double scale(LoadCase loadCase) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    add(loadCase, name -> true, sum);
    return sum.scale;
  }

  private void add(LoadCase loadCase, Predicate<String> which, Wrenches sum) {
    for (LoadLaw law : assembly.loadLaws()) {
      if (which.test(law.owner)) {
        law.add(placements, loadCase.factor(law.owner), sum);
      }
    }
  }

  /**
   * Right side of moving a load along a line by one metre: the couple that its force then adds.
   *
   * @param loadCase factors
   * @param load name of the load
   * @param along unit vector of the way, in the world
   * @return by equations, scaled
   */
  public double[] shift(LoadCase loadCase, String load, Vector along) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    add(loadCase, load::equals, sum);
    Wrenches couples = new Wrenches(assembly.bodyCount());
    for (int body = 0; body < sum.bodies(); body++) {
      double couple = along.x() * sum.fy(body) - along.y() * sum.fx(body);
      couples.add(body, 0, 0, 0, 0, couple / assembly.size());
    }
    return rightSide(couples);
  }

  private double[] rightSide(Wrenches loads) {
    double[] b = new double[rows];
    loads.rightSide(assembly.memberCount(), centre, b);
    return b;
  }
}
