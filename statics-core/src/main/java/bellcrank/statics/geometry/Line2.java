package bellcrank.statics.geometry;

import java.util.Optional;

/**
 * A straight line of the plane with a sense, such as a line of action.
 *
 * @param point any point of the line
 * @param direction its sense
 */
public record Line2(Point point, Direction direction) {

  /**
   * A line from a point and a direction.
   *
   * @param point any point of the line
   * @param direction its sense
   * @return the line
   */
  public static Line2 of(Point point, Direction direction) {
    return new Line2(point, direction);
  }

  /**
   * Moment arm of a force along this line.
   *
   * @param about where the moment is taken
   * @return signed distance in m, positive if a force along the line turns counter-clockwise about
   *     the point
   */
  public double arm(Point about) {
    Vector r = about.to(point);
    return r.x() * direction.y() - r.y() * direction.x();
  }

  /**
   * Where another line crosses this one.
   *
   * @param other another line
   * @return the crossing; empty if the lines are parallel, to rounding
   */
  public Optional<Point> crossing(Line2 other) {
    Direction d = direction;
    Direction e = other.direction;
    double sine = d.x() * e.y() - d.y() * e.x();
    if (Math.abs(sine) <= 4 * Math.ulp(1.0)) {
      return Optional.empty();
    }
    Vector r = point.to(other.point);
    double along = (r.x() * e.y() - r.y() * e.x()) / sine;
    return Optional.of(point.plus(d.times(along)));
  }
}
