package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * Free forces chosen by a rank-revealing factor of all equations at once. It serves whatever the
 * equations are, even if they depend on one another or the shafts of dry pins are among them. The
 * storage serves for one pose after the other.
 */
final class PivotedChoice implements ForceChoice {

  private final Assembly assembly;
  private final int columns;
  private final DMatrixRMaj matrix;
  private final PivotedFactor factor;
  private final double[] right;
  private int rank;

  /**
   * A choice.
   *
   * @param rows number of equations, with those of {@link #shafts}
   * @param actions with numbers
   */
  PivotedChoice(Assembly assembly, int rows, Actions actions) {
    this.assembly = assembly;
    columns = assembly.columns();
    matrix = new DMatrixRMaj(rows, columns);
    right = new double[rows];
    fill(actions);
    factor = new PivotedFactor(matrix);
    findRank();
  }

  /** Number of dry pins that are bodies of their own: their shafts turn unless friction holds. */
  static int shafts(Assembly assembly) {
    int shafts = 0;
    for (Connection connection : assembly.device().connections()) {
      shafts += connection instanceof Pin pin && isShaft(assembly, pin) ? 1 : 0;
    }
    return shafts;
  }

  private static boolean isShaft(Assembly assembly, Pin pin) {
    return pin.friction() > 0 && assembly.pinBody(pin.name()) >= 0;
  }

  /** Takes the forces of another pose. */
  void take(Actions actions) {
    Arrays.fill(matrix.data, 0);
    fill(actions);
    factor.take(matrix);
    findRank();
  }

  private void findRank() {
    rank = factor.rank(Math.max(ForceSpace.RANK_TOLERANCE, 4 * assembly.scale().zero()));
  }

  @Override
  public void turn(double[] load) {
    factor.turn(load);
  }

  @Override
  public void respond(double[] turned, double[] forces) {
    factor.solve(rank, turned, forces);
  }

  /** Number of independent equations. */
  int rank() {
    return rank;
  }

  @Override
  public int freeColumn(int which) {
    return factor.pivot(rank + which);
  }

  /**
   * Writes what one unit of each free force adds.
   *
   * @param free receives the forces, by unknowns
   */
  void write(double[][] free) {
    for (int which = 0; which < free.length; which++) {
      for (int i = 0; i < rank; i++) {
        right[i] = -factor.r(i, rank + which);
      }
      factor.solve(rank, right, free[which]);
      free[which][freeColumn(which)] = 1;
    }
  }

  /**
   * Adds the forces of all actions; a dense matrix needs no pattern of {@link Equations}. A dense
   * factor gains nothing from moments about well-chosen points: all are about the middle.
   */
  private void fill(Actions actions) {
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int at = matrix.getIndex(assembly.firstRow(body), actions.column[action]);
        matrix.data[at] += actions.fx(action);
        matrix.data[at + columns] += actions.fy(action);
        if (body < assembly.memberCount()) {
          matrix.data[at + 2 * columns] += actions.moment(action, 0, 0);
        }
      }
    }
    double zero = assembly.scale().zero();
    for (int k = 0; k < matrix.data.length; k++) {
      matrix.data[k] = Math.abs(matrix.data[k]) > zero ? matrix.data[k] : 0;
    }
    if (matrix.numRows > assembly.rows()) {
      balanceShafts(assembly.rows());
    }
  }

  /** Joints have no equation of moments; the shaft of a dry pin needs one. */
  private void balanceShafts(int firstRow) {
    Device device = assembly.device();
    int row = firstRow;
    for (int i = 0; i < device.connections().size(); i++) {
      if (device.connections().get(i) instanceof Pin pin && isShaft(assembly, pin)) {
        for (int body = 0; body < pin.bodies().size(); body++) {
          matrix.set(row, assembly.coupleColumn(i, body), 1);
        }
        row++;
      }
    }
  }
}
