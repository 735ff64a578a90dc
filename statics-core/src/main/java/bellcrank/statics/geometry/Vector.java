package bellcrank.statics.geometry;

/**
 * A vector of the plane: a displacement (m), a velocity (m/s) or a force (N), as its user says.
 *
 * @param x component to the right, finite
 * @param y component up, finite
 */
public record Vector(double x, double y) {

  /** The zero vector. */
  public static final Vector ZERO = new Vector(0, 0);

  /**
   * Checks the components.
   *
   * @param x component to the right, finite
   * @param y component up, finite
   * @throws IllegalArgumentException if a component is not finite
   */
  public Vector {
    x = Finite.check("x", x);
    y = Finite.check("y", y);
  }

  /**
   * A vector from its components.
   *
   * @param x component to the right
   * @param y component up
   * @return the vector
   * @throws IllegalArgumentException if a component is not finite
   */
  public static Vector of(double x, double y) {
    return new Vector(x, y);
  }

  /**
   * Sum.
   *
   * @param other same kind of quantity
   * @return this plus {@code other}
   */
  public Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y);
  }

  /**
   * Difference.
   *
   * @param other same kind of quantity
   * @return this minus {@code other}
   */
  public Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y);
  }

  /**
   * Multiple.
   *
   * @param factor a number
   * @return this times {@code factor}
   */
  public Vector times(double factor) {
    return new Vector(x * factor, y * factor);
  }

  /**
   * Scalar product.
   *
   * @param other the other vector
   * @return x·x' + y·y'
   */
  public double dot(Vector other) {
    return x * other.x + y * other.y;
  }

  /**
   * Component of the vector product square to the plane; the moment of a force {@code other} with
   * arm this, counter-clockwise positive.
   *
   * @param other the other vector
   * @return x·y' − y·x'
   */
  public double cross(Vector other) {
    return x * other.y - y * other.x;
  }

  /**
   * Length of the vector.
   *
   * @return 0 or more, in the unit of the components
   */
  public double norm() {
    return Math.hypot(x, y);
  }

  /**
   * The vector turned by a quarter turn counter-clockwise.
   *
   * @return (−y, x)
   */
  public Vector perpendicular() {
    return new Vector(-y, x);
  }
}
