package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Line2;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;

/**
 * Where on a line a handle must be so that bodies, taken as one rigid piece, hang from it as they
 * are placed: plumb over or under their centre of gravity. Only stated weights count.
 *
 * @param place the handle, in the world
 * @param distance its distance in m from the line's first point, positive towards the second
 * @param between whether it lies between the two points, these included
 * @param hangs whether the handle is above the centre of gravity, so that the bodies come back when
 *     they swing; false if it is below or at the centre
 */
public record BalancePoint(Point place, double distance, boolean between, boolean hangs) {

  /**
   * The handle of the whole device as drawn.
   *
   * @param device the device
   * @param start name of the line's first point
   * @param end name of its second point, at another place
   * @return where the handle must be; empty if the line is plumb, since then no place on it or any
   *     place will do
   * @throws ModelException if there is no such point, the points are at one place, or there is no
   *     weight or no gravity
   */
  public static Optional<BalancePoint> on(Device device, String start, String end) {
    return on(device, Pose.DRAWN, List.of(), device.point(start), device.point(end));
  }

  /**
   * The handle of bodies in a pose.
   *
   * @param device the device
   * @param pose where its bodies are; they keep their places towards one another
   * @param bodies names of the bodies that are carried; empty for the whole device
   * @param start the line's first point, in the world
   * @param end its second point, at another place
   * @return where the handle must be; empty if the line is plumb, since then no place on it or any
   *     place will do
   * @throws ModelException if there is no such body, the points are at one place, or there is no
   *     weight or no gravity
   */
  public static Optional<BalancePoint> on(
      Device device, Pose pose, List<String> bodies, Point start, Point end) {
    if (!(start.distance(end) > GravityCentre.SAME * device.size())) {
      throw new ModelException(
          device.name(), "line of the handle", start + " to " + end, "two points apart");
    }
    Direction down = GravityCentre.down(device);
    Direction along = Direction.from(start, end);
    Vector way = along.times(1);
    if (Math.abs(way.cross(down.times(1))) <= GravityCentre.SAME) {
      return Optional.empty();
    }
    Point centre = GravityCentre.of(device, pose, bodies);
    return Line2.of(start, along)
        .crossing(Line2.of(centre, down))
        .map(
            place -> {
              double distance = start.to(place).dot(way);
              double under = place.to(centre).dot(down.times(1));
              double same = GravityCentre.SAME * device.size();
              return new BalancePoint(
                  place,
                  distance,
                  distance >= -same && distance <= start.distance(end) + same,
                  under > same);
            });
  }
}
