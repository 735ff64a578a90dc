package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.function.Predicate;
import org.ejml.data.DMatrixRMaj;

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
  private final PivotedFactor factor;
  private final double[][] free;

  private ForceSpace(Assembly assembly, Pose pose) {
    this.assembly = assembly;
    Device device = assembly.device();
    placements = assembly.placements();
    actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    // a dense factor gains nothing from moments about well-chosen points: all are about the middle
    centre = new double[2 * assembly.memberCount()];
    double zero = assembly.scale().zero();
    columns = assembly.columns();
    int shafts = 0;
    for (Connection connection : device.connections()) {
      shafts += connection instanceof Pin pin && isShaft(pin) ? 1 : 0;
    }
    rows = assembly.rows() + shafts;
    DMatrixRMaj a = new DMatrixRMaj(rows, columns);
    fill(a);
    for (int k = 0; k < a.data.length; k++) {
      a.data[k] = Math.abs(a.data[k]) > zero ? a.data[k] : 0;
    }
    balanceShafts(device, a, assembly.rows());
    factor = new PivotedFactor(a);
    rank = factor.rank(Math.max(RANK_TOLERANCE, 4 * zero));
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
    return new ForceSpace(Assembly.withDryPins(device), pose);
  }

  /**
   * The forces in another pose.
   *
   * @param pose where the bodies are
   * @return its forces
   */
  public ForceSpace at(Pose pose) {
    return new ForceSpace(assembly, pose);
  }

  /** A dry pin that is a body of its own: its shaft turns freely unless friction holds it. */
  private boolean isShaft(Pin pin) {
    return pin.friction() > 0 && assembly.pinBody(pin.name()) >= 0;
  }

  /** Writes the forces of all actions; a dense matrix needs no pattern of {@link Equations}. */
  private void fill(DMatrixRMaj a) {
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int at = a.getIndex(assembly.firstRow(body), actions.column[action]);
        a.data[at] += actions.fx(action);
        a.data[at + columns] += actions.fy(action);
        if (body < assembly.memberCount()) {
          a.data[at + 2 * columns] += actions.moment(action, 0, 0);
        }
      }
    }
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
      y[i] = -factor.r(i, rank + which);
    }
    double[] f = factor.solved(rank, y);
    f[factor.pivot(rank + which)] = 1;
    return f;
  }

  /**
   * Loads seen from the factor: what forces can balance comes first, what none can comes last.
   *
   * @param load right side, of {@link #loads} and the like
   * @return for {@link #responseTo} and {@link #leftOf}
   */
  public double[] turned(double[] load) {
    return factor.turned(load);
  }

  /**
   * Forces that balance loads as far as they can be balanced, with all free forces zero.
   *
   * @param turned loads seen from the factor; changed
   * @return by unknowns
   */
  public double[] responseTo(double[] turned) {
    return factor.solved(rank, turned);
  }

  /**
   * What is left of loads that no forces can balance.
   *
   * @param turned loads seen from the factor
   * @param which which condition, from 0 to below {@link #conditions}
   * @return zero if the condition is kept
   */
  public double leftOf(double[] turned, int which) {
    return turned[rank + which];
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
