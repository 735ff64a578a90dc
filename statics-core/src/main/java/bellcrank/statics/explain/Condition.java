package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;

/** What is said to add up to nothing. */
public sealed interface Condition {

  /**
   * Moments about a point.
   *
   * @param place name of the point; empty if no point of the device is there
   * @param about where it is, in m
   */
  record Moments(String place, Point about) implements Condition {}

  /**
   * Forces along a direction.
   *
   * @param along the direction
   */
  record Forces(Direction along) implements Condition {}
}
