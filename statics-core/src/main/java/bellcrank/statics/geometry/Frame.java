package bellcrank.statics.geometry;

/**
 * A rigid displacement: first a turn about the world origin, then a shift. It takes a body from its
 * drawn place to another place.
 *
 * @param shift displacement in m after the turn
 * @param turn in rad, counter-clockwise positive, finite
 */
public record Frame(Vector shift, double turn) {

  /** No displacement. */
  public static final Frame IDENTITY = new Frame(Vector.ZERO, 0);

  /**
   * Checks the angle.
   *
   * @param shift displacement in m after the turn
   * @param turn in rad, counter-clockwise positive, finite
   * @throws IllegalArgumentException if the turn is not finite
   */
  public Frame {
    turn = Finite.check("turn", turn);
  }

  /**
   * A displacement from its parts.
   *
   * @param shift displacement in m after the turn about the origin
   * @param turn in rad, counter-clockwise positive
   * @return the displacement
   */
  public static Frame of(Vector shift, double turn) {
    return new Frame(shift, turn);
  }

  /**
   * A turn about a point.
   *
   * @param centre the point that stays
   * @param turn in rad, counter-clockwise positive
   * @return the displacement
   */
  public static Frame turnAbout(Point centre, double turn) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return new Frame(
        new Vector(
            centre.x() - c * centre.x() + s * centre.y(),
            centre.y() - s * centre.x() - c * centre.y()),
        turn);
  }

  /**
   * Where a point of the body goes.
   *
   * @param drawn the point in the drawn place
   * @return the point in the displaced place
   */
  public Point apply(Point drawn) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return new Point(
        c * drawn.x() - s * drawn.y() + shift.x(), s * drawn.x() + c * drawn.y() + shift.y());
  }

  /**
   * Where a direction fixed in the body goes.
   *
   * @param drawn the direction in the drawn place
   * @return the turned direction
   */
  public Direction apply(Direction drawn) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return Direction.from(c * drawn.x() - s * drawn.y(), s * drawn.x() + c * drawn.y());
  }

  /**
   * This displacement followed by another.
   *
   * @param next the later one
   * @return both in one
   */
  public Frame then(Frame next) {
    Point moved = next.apply(Point.of(shift.x(), shift.y()));
    return new Frame(Point.ORIGIN.to(moved), turn + next.turn);
  }
}
