package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/**
 * A force on a body that is spread along a straight segment, its intensity varying linearly.
 *
 * @param part name of the load
 * @param on name of the body on which it acts
 * @param origin where it comes from
 * @param from where it starts, in m, in the world
 * @param to where it ends
 * @param start intensity at the start in N/m, components to the right and up
 * @param end intensity at the end in N/m
 * @param length metres that the intensities are per, in m: of the segment, or of its level
 *     projection as drawn
 */
public record SpreadForce(
    String part,
    String on,
    Origin origin,
    Point from,
    Point to,
    Vector start,
    Vector end,
    double length) {

  /**
   * The force in all.
   *
   * @return components in N
   */
  public Vector total() {
    return start.plus(end).times(length / 2);
  }

  /**
   * Middle of the segment.
   *
   * @return in the world
   */
  public Point middle() {
    return from.plus(from.to(to).times(0.5));
  }

  /**
   * Couple that it makes about the middle of the segment, beside its force there: the part of the
   * trapezoid that changes sign is a couple of (end − start) · length² / 12.
   *
   * @return in N·m, counter-clockwise positive
   */
  public double couple() {
    return from.to(to).cross(end.minus(start).times(length)) / 12;
  }
}
