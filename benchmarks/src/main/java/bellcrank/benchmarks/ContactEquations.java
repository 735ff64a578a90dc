package bellcrank.benchmarks;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRPDecomposition_F64;

/**
 * Balance of members that touch one another and the ground at rough contacts, and all forces that
 * keep it: f = f₀ + λ·f₁ + N·z. Forces are normal and tangential by turns, in the order of the
 * contacts, divided by the sum of the loads; moments are divided by the device's size. Which forces
 * are free a QR factor with column exchanges decides.
 */
final class ContactEquations {

  /** Share of the largest diagonal entry of the factor below which equations depend. */
  private static final double DEPENDENT = 1e-11;

  private final Device device;
  private final Pose pose;
  private final LoadCase loadCase;
  private final List<Contact> contacts = new ArrayList<>();
  private final int rows;
  private final int columns;
  private final double[] fixedLoads;
  private final double[] variedLoads;
  private double scale;
  private final DMatrixRMaj q;
  private final DMatrixRMaj r;
  private final int[] order;

  private ContactEquations(Device device, Pose pose, LoadCase loadCase, String varied) {
    this.device = device;
    this.pose = pose;
    this.loadCase = loadCase;
    for (Connection connection : device.connections()) {
      if (!(connection instanceof Contact contact) || contact.friction() == 0) {
        throw new IllegalArgumentException("rough contacts only, not " + connection);
      }
      contacts.add(contact);
    }
    rows = 3 * device.members().size();
    columns = 2 * contacts.size();
    fixedLoads = new double[rows];
    variedLoads = new double[rows];
    for (Load load : device.loads()) {
      load(load, load.name().equals(varied) ? variedLoads : fixedLoads);
    }
    QRPDecomposition_F64<DMatrixRMaj> factor = DecompositionFactory_DDRM.qrp(rows, columns);
    if (!factor.decompose(matrix())) {
      throw new IllegalStateException("no factor was found");
    }
    q = factor.getQ(new DMatrixRMaj(1, 1), false);
    r = factor.getR(new DMatrixRMaj(1, 1), false);
    order = factor.getColPivots();
    if (rows > columns || Math.abs(r.get(rows - 1, rows - 1)) < DEPENDENT * Math.abs(r.get(0, 0))) {
      throw new IllegalArgumentException("contacts must be able to balance any load");
    }
  }

  /**
   * Equations of a device.
   *
   * @param device members on rough contacts, under forces and weights
   * @param pose where the members are
   * @param loadCase factors on the loads
   * @param varied name of the load that is multiplied by λ
   * @return the equations, factored
   * @throws IllegalArgumentException if the device has other parts or cannot balance every load
   */
  static ContactEquations of(Device device, Pose pose, LoadCase loadCase, String varied) {
    return new ContactEquations(device, pose, loadCase, varied);
  }

  private Point place(String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  private Direction push(Contact contact) {
    return pose.frame(contact.other()).apply(contact.push());
  }

  private DMatrixRMaj matrix() {
    DMatrixRMaj matrix = new DMatrixRMaj(rows, columns);
    for (int k = 0; k < contacts.size(); k++) {
      Contact contact = contacts.get(k);
      Point at = place(contact.body(), contact.at());
      Direction push = push(contact);
      for (int side = 1; side >= -1; side -= 2) {
        int body = device.bodyIndex(side > 0 ? contact.body() : contact.other());
        double x = side * push.x();
        double y = side * push.y();
        enter(matrix, body, 2 * k, at, x, y);
        enter(matrix, body, 2 * k + 1, at, y, -x);
      }
    }
    return matrix;
  }

  private void enter(DMatrixRMaj matrix, int body, int column, Point at, double x, double y) {
    if (body >= 0) {
      double moment = moment(at, x, y);
      matrix.add(3 * body, column, x);
      matrix.add(3 * body + 1, column, y);
      matrix.add(3 * body + 2, column, Math.abs(moment) < 1e-14 ? 0 : moment);
    }
  }

  /** Moment about the middle of the device, over its size. */
  private double moment(Point at, double x, double y) {
    double armX = at.x() - device.middle().x();
    double armY = at.y() - device.middle().y();
    return (armX * y - armY * x) / device.size();
  }

  private void load(Load load, double[] right) {
    Vector vector;
    String name;
    Point at;
    if (load instanceof Force force) {
      vector = force.vector();
      name = force.body();
      at = place(name, force.at());
    } else if (load instanceof Weight weight && weight.at().isPresent()) {
      vector = device.gravity().times(weight.mass());
      name = weight.body();
      at = place(name, weight.at().get());
    } else {
      throw new IllegalArgumentException("forces and weights at points only, not " + load);
    }
    double factor = loadCase.factor(load.name());
    double x = factor * vector.x();
    double y = factor * vector.y();
    int body = device.bodyIndex(name);
    right[3 * body] -= x;
    right[3 * body + 1] -= y;
    right[3 * body + 2] -= moment(at, x, y);
    scale += Math.abs(x) + Math.abs(y);
  }

  List<Contact> contacts() {
    return contacts;
  }

  int freedom() {
    return columns - rows;
  }

  /** The forces f₀, by contacts. */
  double[] fixed() {
    return response(fixedLoads);
  }

  /** The forces f₁, by contacts. */
  double[] varied() {
    return response(variedLoads);
  }

  private double[] response(double[] loads) {
    double[] y = new double[rows];
    for (int i = 0; i < rows; i++) {
      for (int row = 0; row < rows; row++) {
        y[i] += q.get(row, i) * loads[row] / scale;
      }
    }
    return scattered(y);
  }

  /** What one unit of a free force adds, by contacts: a column of N. */
  double[] free(int which) {
    double[] y = new double[rows];
    for (int i = 0; i < rows; i++) {
      y[i] = -r.get(i, rows + which);
    }
    double[] forces = scattered(y);
    forces[order[rows + which]] = 1;
    return forces;
  }

  private double[] scattered(double[] y) {
    double[] forces = new double[columns];
    for (int i = rows - 1; i >= 0; i--) {
      for (int j = i + 1; j < rows; j++) {
        y[i] -= r.get(i, j) * y[j];
      }
      y[i] /= r.get(i, i);
      forces[order[i]] = y[i];
    }
    return forces;
  }
}
