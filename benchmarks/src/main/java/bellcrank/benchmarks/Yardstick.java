package bellcrank.benchmarks;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/**
 * The plain way to write the equations of a built device, as the measure of speed: bodies and
 * points are looked up by name, every member's moments are taken about the world's origin, and the
 * matrix is dense. It knows the kinds of parts that the {@link SampleDevices} have. Matrix and
 * solver are used again for every solve.
 *
 * <p>Unknowns are in the order of the connections, then the sought forces; the force of a
 * connection is that on its first body, a tension pulls.
 */
public final class Yardstick {

  private final Device device;
  private final DenseSolver solver;
  private final int members;
  private Pose pose = Pose.DRAWN;
  private int column;

  private Yardstick(Device device, DenseSolver solver) {
    this.device = device;
    this.solver = solver;
    members = device.members().size();
  }

  /**
   * A yardstick for a device.
   *
   * @param device the device
   * @param solver solver with as many unknowns as the device has
   * @return the yardstick
   */
  public static Yardstick of(Device device, DenseSolver solver) {
    return new Yardstick(device, solver);
  }

  /**
   * Assembles and solves.
   *
   * @param at where the bodies are
   * @param loadCase factors on the loads
   * @return the unknowns in N; overwritten by the next solve
   */
  public double[] solve(Pose at, LoadCase loadCase) {
    pose = at;
    column = 0;
    solver.clear();
    for (Connection connection : device.connections()) {
      if (connection instanceof Pin pin) {
        Point one = place(pin.bodies().get(0), pin.at());
        Point two = place(pin.bodies().get(1), pin.at());
        pair(pin.bodies().get(0), one, pin.bodies().get(1), two, 1, 0);
        pair(pin.bodies().get(0), one, pin.bodies().get(1), two, 0, 1);
      } else if (connection instanceof Roller roller) {
        Point touching = place(roller.body(), roller.at());
        Direction push = turned(roller.other(), roller.push());
        pair(roller.body(), touching, roller.other(), touching, push.x(), push.y());
      } else if (connection instanceof Strut strut) {
        axial(strut.first(), strut.second());
      } else if (connection instanceof Line line) {
        axial(line.first(), line.second());
      } else if (connection instanceof Reeving reeving) {
        rope(reeving);
      } else {
        throw new IllegalArgumentException("the yardstick has no equations for " + connection);
      }
    }
    for (Load load : device.loads()) {
      double factor = loadCase.factor(load.name());
      if (load instanceof Force force) {
        Vector vector = force.vector();
        given(force.body(), place(force.body(), force.at()), factor, vector);
      } else if (load instanceof Weight weight) {
        Point centre = place(weight.body(), weight.at().orElseThrow());
        given(weight.body(), centre, factor * weight.mass(), device.gravity());
      } else if (load instanceof Sought sought) {
        Direction direction = sought.direction().orElseThrow();
        Point hand = place(sought.body(), sought.at().orElseThrow());
        force(device.bodyIndex(sought.body()), hand.x(), hand.y(), direction.x(), direction.y());
        column++;
      } else {
        throw new IllegalArgumentException("the yardstick has no equations for " + load);
      }
    }
    return solver.solve();
  }

  private Point place(String body, String point) {
    Point drawn = device.point(point);
    return pose.isDrawn() ? drawn : pose.frame(body).apply(drawn);
  }

  private Direction turned(String body, Direction drawn) {
    return pose.isDrawn() ? drawn : pose.frame(body).apply(drawn);
  }

  /** One unknown that acts on the first body and opposite on the second. */
  private void pair(String first, Point a, String second, Point b, double fx, double fy) {
    force(device.bodyIndex(first), a.x(), a.y(), fx, fy);
    force(device.bodyIndex(second), b.x(), b.y(), -fx, -fy);
    column++;
  }

  private void axial(End first, End second) {
    Point a = place(first.body(), first.at());
    Point b = place(second.body(), second.at());
    double length = a.distance(b);
    pair(first.body(), a, second.body(), b, (b.x() - a.x()) / length, (b.y() - a.y()) / length);
  }

  /** Without losses every straight part pulls at both its ends with the one tension. */
  private void rope(Reeving rope) {
    if (rope.hauling() != Reeving.Hauling.IDEAL) {
      throw new IllegalArgumentException("the yardstick knows ropes without losses only");
    }
    for (int i = 1; i < rope.stops().size(); i++) {
      Stop start = rope.stops().get(i - 1);
      Stop end = rope.stops().get(i);
      Point a = place(start.body(), start.at());
      Point b = place(end.body(), end.at());
      double r1 = start.turn().sign() * start.radius();
      double r2 = end.turn().sign() * end.radius();
      double dx = b.x() - a.x();
      double dy = b.y() - a.y();
      // the part makes this angle with the line of centres; a circle that it passes
      // counter-clockwise lies to its left
      double distance = Math.sqrt(dx * dx + dy * dy);
      double sine = (r1 - r2) / distance;
      double cosine = Math.sqrt(1 - sine * sine);
      double ux = (dx * cosine - dy * sine) / distance;
      double uy = (dy * cosine + dx * sine) / distance;
      force(device.bodyIndex(start.body()), a.x() + r1 * uy, a.y() - r1 * ux, ux, uy);
      force(device.bodyIndex(end.body()), b.x() + r2 * uy, b.y() - r2 * ux, -ux, -uy);
    }
    column++;
  }

  private void force(int body, double x, double y, double fx, double fy) {
    if (body < 0) {
      return;
    }
    int row = row(body);
    solver.add(row, column, fx);
    solver.add(row + 1, column, fy);
    if (body < members) {
      solver.add(row + 2, column, x * fy - y * fx);
    }
  }

  private void given(String name, Point at, double factor, Vector vector) {
    int body = device.bodyIndex(name);
    int row = row(body);
    double fx = factor * vector.x();
    double fy = factor * vector.y();
    solver.addRight(row, -fx);
    solver.addRight(row + 1, -fy);
    if (body < members) {
      solver.addRight(row + 2, at.y() * fx - at.x() * fy);
    }
  }

  private int row(int body) {
    return body < members ? 3 * body : 3 * members + 2 * (body - members);
  }
}
