package bellcrank.statics.motion;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.motion.internal.Driver;
import java.util.List;

/** Makes what reads a drive from the places of the bodies. */
final class Drivers {

  private Drivers() {}

  /** Unknowns that a drive lets go. */
  static List<Integer> released(Device device, Drive drive) {
    return drive instanceof Drive.Length length
        ? List.of(Assembly.of(device).firstColumn(index(device, length.connection())))
        : List.of();
  }

  private static int index(Device device, String connection) {
    Connection found = device.connection(connection).orElse(null);
    if (!(found instanceof Strut
        || found instanceof Line
        || found instanceof Reeving
        || found instanceof Screw)) {
      throw new ModelException(
          device.name(), "drive", connection, "the name of a strut, line, reeving or screw");
    }
    return device.connections().indexOf(found);
  }

  /** One value of the driver in SI units. */
  static double unit(Device device, Drive drive) {
    return drive instanceof Drive.Turn ? 1 : device.size();
  }

  static Driver of(Device device, Drive drive) {
    if (drive instanceof Drive.Turn turn) {
      return turn(member(device, turn.member()), other(device, turn.other()));
    }
    if (drive instanceof Drive.Length length) {
      return length(Assembly.of(device).firstColumn(index(device, length.connection())));
    }
    return slide(device, (Drive.Slide) drive);
  }

  private static int member(Device device, String name) {
    if (!(device.body(name).orElse(null) instanceof Member)) {
      throw new ModelException(device.name(), "drive", name, "the name of a member");
    }
    return device.bodyIndex(name);
  }

  private static int other(Device device, String name) {
    return name.equals(Ground.NAME) ? -1 : member(device, name);
  }

  private static Driver turn(int member, int other) {
    return new Driver() {
      @Override
      public double value(Closure closure) {
        return closure.turn(member) - closure.turn(other);
      }

      @Override
      public void addRow(Closure closure, double[] row) {
        row[closure.assembly().firstRow(member) + 2] += 1;
        if (other >= 0) {
          row[closure.assembly().firstRow(other) + 2] -= 1;
        }
      }
    };
  }

  private static Driver length(int column) {
    return new Driver() {
      @Override
      public double value(Closure closure) {
        return -closure.gap(column);
      }

      @Override
      public void addRow(Closure closure, double[] row) {
        closure.addRow(column, -1, row);
      }
    };
  }

  private static Driver slide(Device device, Drive.Slide slide) {
    if (device.body(slide.body()).isEmpty() || slide.body().equals(Ground.NAME)) {
      throw new ModelException(
          device.name(), "drive", slide.body(), "the name of a member or joint");
    }
    int body = device.bodyIndex(slide.body());
    Point drawn = device.point(slide.point());
    Direction along = slide.along();
    double qx = (drawn.x() - device.middle().x()) / device.size();
    double qy = (drawn.y() - device.middle().y()) / device.size();
    return new Driver() {
      @Override
      public double value(Closure closure) {
        return along.x() * (closure.x(body, qx, qy) - qx)
            + along.y() * (closure.y(body, qx, qy) - qy);
      }

      @Override
      public void addRow(Closure closure, double[] row) {
        int first = closure.assembly().firstRow(body);
        row[first] += along.x();
        row[first + 1] += along.y();
        if (body < closure.assembly().memberCount()) {
          row[first + 2] +=
              closure.x(body, qx, qy) * along.y() - closure.y(body, qx, qy) * along.x();
        }
      }
    };
  }
}
