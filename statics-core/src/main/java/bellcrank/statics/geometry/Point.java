package bellcrank.statics.geometry;

/**
 * A place in the plane.
 *
 * @param x abscissa in m, positive to the right, finite
 * @param y ordinate in m, positive up, finite
 */
public record Point(double x, double y) {

  /** The origin of the world axes. */
  public static final Point ORIGIN = new Point(0, 0);

  /**
   * Checks the coordinates.
   *
   * @param x abscissa in m, positive to the right, finite
   * @param y ordinate in m, positive up, finite
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public Point {
    x = Finite.check("x", x);
    y = Finite.check("y", y);
  }

  /**
   * A point from its coordinates.
   *
   * @param x abscissa in m, positive to the right
   * @param y ordinate in m, positive up
   * @return the point
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public static Point of(double x, double y) {
    return new Point(x, y);
  }

  /**
   * The vector from this point to another.
   *
   * @param other the end
   * @return {@code other} minus this, in m
   */
  public Vector to(Point other) {
    return new Vector(other.x - x, other.y - y);
  }

  /**
   * This point displaced.
   *
   * @param displacement in m
   * @return the displaced point
   */
  public Point plus(Vector displacement) {
    return new Point(x + displacement.x(), y + displacement.y());
  }

  /**
   * Distance to another point.
   *
   * @param other the other point
   * @return distance in m, 0 or more
   */
  public double distance(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }
}
