package bellcrank.statics.motion;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.function.DoubleUnaryOperator;

/** Distances, differences and powers of poses, found without the library's motions. */
final class PlainMotion {

  private PlainMotion() {}

  static Point place(Device device, Pose pose, String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  static Vector between(Device device, Pose pose, String body, String from, String to) {
    return place(device, pose, body, from).to(place(device, pose, body, to));
  }

  /** Farthest that a connection is from fitting, in m. */
  static double misfit(Device device, Pose pose, Drive drive) {
    double worst = 0;
    for (Connection connection : device.connections()) {
      boolean driven =
          drive instanceof Drive.Length length && length.connection().equals(connection.name());
      worst = driven ? worst : Math.max(worst, misfit(device, pose, connection));
    }
    return worst;
  }

  private static double misfit(Device device, Pose pose, Connection connection) {
    if (connection instanceof Pin pin) {
      double worst = 0;
      for (String body : pin.bodies()) {
        worst =
            Math.max(
                worst,
                place(device, pose, body, pin.at())
                    .distance(place(device, pose, pin.bodies().get(0), pin.at())));
      }
      return worst;
    } else if (connection instanceof Guide guide) {
      double turned =
          Math.abs(pose.frame(guide.body()).turn() - pose.frame(guide.other()).turn())
              * device.size();
      return Math.max(
          turned, beside(device, pose, guide.at(), guide.body(), guide.other(), guide.along()));
    } else if (connection instanceof Slot slot) {
      return beside(device, pose, slot.at(), slot.body(), slot.other(), slot.along());
    } else if (connection instanceof Roller roller) {
      Vector push = roller.push().times(1);
      Direction along = Direction.from(push.perpendicular());
      return beside(device, pose, roller.at(), roller.body(), roller.other(), along);
    } else if (connection instanceof Reeving reeving) {
      return Math.abs(
          PlainRope.of(device, pose, reeving.stops()).length()
              - PlainRope.of(device, Pose.DRAWN, reeving.stops()).length());
    }
    throw new AssertionError(connection);
  }

  /** Distance of a body's point from a line of another body. */
  private static double beside(
      Device device, Pose pose, String at, String body, String other, Direction along) {
    Frame frame = pose.frame(other);
    Vector way = frame.apply(along).times(1);
    return Math.abs(way.cross(frame.apply(device.point(at)).to(place(device, pose, body, at))));
  }

  /** A derivative by central differences. */
  record Derivative(double value, double doubt) {}

  /** Romberg's scheme on central differences over steps that halve: an error of the ninth order. */
  static Derivative derivative(DoubleUnaryOperator function, double at, double step) {
    int levels = 4;
    double[][] table = new double[levels][levels];
    for (int i = 0; i < levels; i++) {
      double h = step / (1 << i);
      table[i][0] = (function.applyAsDouble(at + h) - function.applyAsDouble(at - h)) / (2 * h);
      for (int j = 1; j <= i; j++) {
        double factor = Math.pow(4, j);
        table[i][j] = (factor * table[i][j - 1] - table[i - 1][j - 1]) / (factor - 1);
      }
    }
    double best = table[levels - 1][levels - 1];
    return new Derivative(best, Math.abs(best - table[levels - 1][levels - 2]));
  }

  /** Work that a load would do from a pose, keeping the force that it has there. */
  static DoubleUnaryOperator work(Course course, double at, Load load) {
    Device device = course.device();
    double factor = course.loadCase().factor(load.name());
    if (load instanceof SpreadLoad spread) {
      Vector way =
          spread
              .direction()
              .orElseGet(
                  () ->
                      Direction.from(
                          between(
                                  device,
                                  course.pose(at),
                                  spread.member(),
                                  spread.from(),
                                  spread.to())
                              .perpendicular()))
              .times(1);
      return drive -> factor * spread(device, spread, way, course.pose(drive));
    }
    return drive -> factor * work(device, load, course.pose(drive));
  }

  /** Two points of Gauss take a linear load on a linear displacement exactly. */
  private static double spread(Device device, SpreadLoad load, Vector way, Pose pose) {
    Vector drawn = device.point(load.from()).to(device.point(load.to()));
    double sum = 0;
    for (double share : new double[] {0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6}) {
      Point place =
          pose.frame(load.member()).apply(device.point(load.from()).plus(drawn.times(share)));
      double intensity = load.start() + share * (load.end() - load.start());
      sum += intensity * drawn.norm() / 2 * way.dot(Point.ORIGIN.to(place));
    }
    return sum;
  }

  private static double work(Device device, Load load, Pose pose) {
    if (load instanceof Force force) {
      return force.vector().dot(Point.ORIGIN.to(place(device, pose, force.body(), force.at())));
    } else if (load instanceof Weight weight) {
      Point at = place(device, pose, weight.body(), weight.at().orElseThrow());
      return device.gravity().times(weight.mass()).dot(Point.ORIGIN.to(at));
    } else if (load instanceof Couple couple) {
      return couple.moment() * pose.frame(couple.member()).turn();
    } else if (load instanceof Spring spring) {
      Point a = place(device, pose, spring.first().body(), spring.first().at());
      Point b = place(device, pose, spring.second().body(), spring.second().at());
      double longer = a.distance(b) - spring.freeLength();
      return -spring.stiffness() * longer * longer / 2;
    } else if (load instanceof TorsionSpring spring) {
      double turned =
          spring.turned() + pose.frame(spring.body()).turn() - pose.frame(spring.other()).turn();
      return -spring.stiffness() * turned * turned / 2;
    }
    return 0;
  }
}
