package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;

/**
 * First-order motion of one body; speeds are relative to those of the other bodies of the same
 * motion.
 *
 * @param body name of the body
 * @param turning turning speed in rad/s, counter-clockwise positive; 0 for a slide or a joint
 * @param velocity velocity in m/s of the {@code reference} point
 * @param reference a point of the body, in world coordinates
 * @param centre the point about which it turns; empty for a slide or a joint
 */
public record BodyMotion(
    String body, double turning, Vector velocity, Point reference, Optional<Point> centre) {

  /** Turning slower than this share of the fastest motion over the size is a slide. */
  private static final double SLIDE = 1e-8;

  /**
   * Motion of a body from the velocity of one of its points.
   *
   * @param device the device to which the body belongs; its fastest motion is taken to be about 1
   *     m/s
   * @param body name of the body
   * @param velocity velocity in m/s of the reference point
   * @param reference a point of the body, in world coordinates
   * @param turning turning speed in rad/s, counter-clockwise positive
   * @return the motion; a slide if it turns too slowly to tell a centre
   */
  public static BodyMotion of(
      Device device, String body, Vector velocity, Point reference, double turning) {
    if (Math.abs(turning) * device.size() <= SLIDE) {
      return new BodyMotion(body, 0, velocity, reference, Optional.empty());
    }
    Point centre = reference.plus(velocity.perpendicular().times(1 / turning));
    return new BodyMotion(body, turning, velocity, reference, Optional.of(centre));
  }

  /**
   * Velocity of another point of the body.
   *
   * @param point the point, in world coordinates
   * @return in m/s
   */
  public Vector velocityAt(Point point) {
    return velocity.plus(reference.to(point).perpendicular().times(turning));
  }
}
