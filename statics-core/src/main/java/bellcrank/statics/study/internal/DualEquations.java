package bellcrank.statics.study.internal;

import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of equilibrium of a device as drawn, with their rates: rows x, y and, for members,
 * moment about the middle of the stated device per its size; columns are forces in N and couples in
 * N·m per size.
 */
final class DualEquations {

  final DualLaws laws;
  final List<DualAction> given;
  private final DualDevice at;
  private final int[] firstRow;
  private final int rows;
  private final double size;
  private final DualVector middle;

  DualEquations(DualDevice at, boolean dryPins) {
    this.at = at;
    laws = DualLaws.of(at, dryPins);
    given = DualLoads.of(at);
    size = at.device.size();
    middle = DualVector.of(at.device.middle());
    firstRow = new int[at.bodyCount()];
    int row = 0;
    for (int body = 0; body < firstRow.length; body++) {
      firstRow[body] = row;
      row += at.turns(body) ? 3 : 2;
    }
    rows = row;
  }

  int rows() {
    return rows;
  }

  /** What one of the unknowns counts in N or N·m. */
  double unit(int column) {
    return laws.couples.get(column) ? size : 1;
  }

  DMatrixRMaj matrix() {
    DMatrixRMaj a = new DMatrixRMaj(rows, laws.columns());
    for (DualAction action : laws.actions) {
      add(a, action.column(), action, unit(action.column()), false);
    }
    return a;
  }

  DMatrixRMaj matrixRates() {
    DMatrixRMaj a = new DMatrixRMaj(rows, laws.columns());
    for (DualAction action : laws.actions) {
      add(a, action.column(), action, unit(action.column()), true);
    }
    return a;
  }

  DMatrixRMaj loads() {
    return loads(given, false);
  }

  /** Loads, or their rates. */
  DMatrixRMaj loads(List<DualAction> actions, boolean rate) {
    DMatrixRMaj b = new DMatrixRMaj(rows, 1);
    actions.forEach(action -> add(b, 0, action, 1, rate));
    return b;
  }

  /** The rate at which forces fall out of balance that stay what they are. */
  DMatrixRMaj imbalance(double[] forces) {
    return imbalance(forces, given);
  }

  /** The same under other loads. */
  DMatrixRMaj imbalance(double[] forces, List<DualAction> loads) {
    DMatrixRMaj b = loads(loads, true);
    for (DualAction action : laws.actions) {
      add(b, 0, action, forces[action.column()] * unit(action.column()), true);
    }
    return b;
  }

  /** Sum of the sizes of all that is added up there. */
  double sizeOfRates(double[] forces) {
    double sum = 0;
    for (DualAction action : given) {
      sum += size(action);
    }
    for (DualAction action : laws.actions) {
      sum += Math.abs(forces[action.column()] * unit(action.column())) * size(action);
    }
    return sum;
  }

  private double size(DualAction action) {
    return Math.abs(action.force().x().rate())
        + Math.abs(action.force().y().rate())
        + Math.abs(action.moment(middle).rate()) / size;
  }

  private void add(DMatrixRMaj to, int column, DualAction action, double factor, boolean rate) {
    if (action.body() < 0) {
      return;
    }
    int row = firstRow[action.body()];
    to.add(row, column, factor * of(action.force().x(), rate));
    to.add(row + 1, column, factor * of(action.force().y(), rate));
    if (at.turns(action.body())) {
      to.add(row + 2, column, factor / size * of(action.moment(middle), rate));
    }
  }

  private static double of(Dual number, boolean rate) {
    return rate ? number.rate() : number.value();
  }
}
