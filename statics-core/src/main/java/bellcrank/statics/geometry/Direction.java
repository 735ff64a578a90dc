package bellcrank.statics.geometry;

/**
 * A direction of the plane, kept as a unit vector; the zero vector is not one.
 *
 * @param x cosine of the angle from +x
 * @param y sine of the angle from +x
 */
public record Direction(double x, double y) {

  /** +y. */
  public static final Direction UP = new Direction(0, 1);

  /** −y. */
  public static final Direction DOWN = new Direction(0, -1);

  /** −x. */
  public static final Direction LEFT = new Direction(-1, 0);

  /** +x. */
  public static final Direction RIGHT = new Direction(1, 0);

  /** Allowed deviation of the length from 1 for components taken as they are; a few ulps. */
  private static final double UNIT_LENGTH_TOLERANCE = 1e-14;

  /**
   * Checks that the components form a unit vector.
   *
   * @param x cosine of the angle from +x
   * @param y sine of the angle from +x
   * @throws IllegalArgumentException if they do not, within rounding
   */
  public Direction {
    x = Finite.check("x", x);
    y = Finite.check("y", y);
    if (Math.abs(Math.hypot(x, y) - 1) > UNIT_LENGTH_TOLERANCE) {
      throw new IllegalArgumentException(
          "direction: expected components of a unit vector, got (" + x + ", " + y + ")");
    }
  }

  /**
   * The direction of a vector.
   *
   * @param x component to the right
   * @param y component up
   * @return the direction
   * @throws IllegalArgumentException if both are zero or one is not finite
   */
  public static Direction from(double x, double y) {
    double norm = Math.hypot(Finite.check("x", x), Finite.check("y", y));
    if (norm == 0 || Double.isInfinite(norm)) {
      throw new IllegalArgumentException(
          "direction: expected a vector of finite length other than zero, got ("
              + x
              + ", "
              + y
              + ")");
    }
    double ux = x / norm;
    double uy = y / norm;
    // a second pass: the first quotient of a denormal norm is not yet a unit vector
    double again = Math.hypot(ux, uy);
    return new Direction(ux / again, uy / again);
  }

  /**
   * The direction of a vector.
   *
   * @param vector any vector but zero
   * @return the direction
   * @throws IllegalArgumentException if the vector is zero
   */
  public static Direction from(Vector vector) {
    return from(vector.x(), vector.y());
  }

  /**
   * The direction from one point to another.
   *
   * @param start start
   * @param end end, another point
   * @return the direction
   * @throws IllegalArgumentException if both points are the same
   */
  public static Direction from(Point start, Point end) {
    return from(end.x() - start.x(), end.y() - start.y());
  }

  /**
   * The direction at an angle from +x. Multiples of a quarter turn are exact.
   *
   * @param angle in rad, counter-clockwise positive, finite
   * @return the direction
   * @throws IllegalArgumentException if the angle is not finite
   */
  public static Direction ofAngle(double angle) {
    double quarters = Finite.check("angle", angle) / (Math.PI / 2);
    double whole = Math.rint(quarters);
    if (Math.abs(quarters - whole) <= 4 * Math.ulp(quarters)) {
      return switch ((int) Math.floorMod((long) whole, 4L)) {
        case 0 -> RIGHT;
        case 1 -> UP;
        case 2 -> LEFT;
        default -> DOWN;
      };
    }
    return new Direction(Math.cos(angle), Math.sin(angle));
  }

  /**
   * Angle from +x.
   *
   * @return in rad, counter-clockwise, 0 included to 2π excluded
   */
  public double angle() {
    double angle = Math.atan2(y, x);
    return angle < 0 ? Math.min(angle + 2 * Math.PI, Math.nextDown(2 * Math.PI)) : angle;
  }

  /**
   * The vector of a given size in this direction.
   *
   * @param size signed size
   * @return size times the unit vector
   */
  public Vector times(double size) {
    return new Vector(x * size, y * size);
  }

  /**
   * This direction turned by a quarter turn counter-clockwise: its left-hand side.
   *
   * @return the direction square to this one
   */
  public Direction perpendicular() {
    return new Direction(-y, x);
  }

  /**
   * The opposite direction.
   *
   * @return this turned by half a turn
   */
  public Direction opposite() {
    return new Direction(-x, -y);
  }
}
