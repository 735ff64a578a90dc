package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/**
 * How bodies, taken as one rigid piece, hang when they are carried from a point: their centre of
 * gravity comes to lie plumb under the point. Only stated weights count.
 */
public sealed interface Hang {

  /**
   * It turns about the point.
   *
   * @param stable turn in rad to where the centre of gravity is plumb under the point, above −π up
   *     to π, counter-clockwise positive: there it comes to rest
   * @param unstable turn to where the centre is plumb over the point, in the same range: there it
   *     balances until it is disturbed
   * @param arm distance of the centre of gravity from the point in m, above 0
   */
  record Turned(double stable, double unstable, double arm) implements Hang {}

  /** The centre of gravity is at the point: it hangs however it is put. */
  record Anyhow() implements Hang {}

  /**
   * How the whole device hangs as drawn.
   *
   * @param device the device
   * @param point name of the point from which it is carried
   * @return the turn that it makes
   * @throws ModelException if there is no such point, no weight or no gravity
   */
  static Hang of(Device device, String point) {
    return of(device, Pose.DRAWN, List.of(), device.point(point));
  }

  /**
   * How bodies of a device hang.
   *
   * @param device the device
   * @param pose where its bodies are; they keep their places towards one another
   * @param bodies names of the bodies that are carried; empty for the whole device
   * @param from the point from which they are carried, in the world
   * @return the turn that they make
   * @throws ModelException if there is no such body, no weight or no gravity
   */
  static Hang of(Device device, Pose pose, List<String> bodies, Point from) {
    Direction down = GravityCentre.down(device);
    Vector arm = from.to(GravityCentre.of(device, pose, bodies));
    if (arm.norm() <= GravityCentre.SAME * device.size()) {
      return new Anyhow();
    }
    Vector plumb = down.times(1);
    double stable = Math.atan2(arm.cross(plumb), arm.dot(plumb));
    stable = stable == -Math.PI ? Math.PI : stable;
    return new Turned(stable, opposite(stable), arm.norm());
  }

  private static double opposite(double turn) {
    return turn > 0 ? turn - Math.PI : turn + Math.PI;
  }
}
