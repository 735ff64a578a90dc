package bellcrank.statics.equilibrium;

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
