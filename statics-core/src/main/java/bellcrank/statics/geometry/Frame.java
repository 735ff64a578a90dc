package bellcrank.statics.geometry;

/**
 * A rigid displacement: first a turn about the world origin, then a shift. It takes a body from its
 * drawn place to another place.
 */
public final class Frame {

  /** No displacement. */
  public static final Frame IDENTITY = new Frame(Vector.ZERO, 0);

  private final Vector shift;
  private final double turn;
  private final double cosine;
  private final double sine;

  private Frame(Vector shift, double turn) {
    this.shift = shift;
    this.turn = Finite.check("turn", turn);
    cosine = Math.cos(turn);
    sine = Math.sin(turn);
  }

  /**
   * A displacement from its parts.
   *
   * @param shift displacement in m after the turn about the origin
   * @param turn in rad, counter-clockwise positive
   * @return the displacement
   * @throws IllegalArgumentException if the turn is not finite
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
   * @throws IllegalArgumentException if the turn is not finite
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
   * The shift.
   *
   * @return displacement in m after the turn about the origin
   */
  public Vector shift() {
    return shift;
  }

  /**
   * The turn.
   *
   * @return in rad, counter-clockwise positive, finite
   */
  public double turn() {
    return turn;
  }

  /**
   * Cosine of the turn.
   *
   * @return from −1 to 1
   */
  public double cosine() {
    return cosine;
  }

  /**
   * Sine of the turn.
   *
   * @return from −1 to 1
   */
  public double sine() {
    return sine;
  }

  /**
   * Where a point of the body goes.
   *
   * @param drawn the point in the drawn place
   * @return the point in the displaced place
   */
  public Point apply(Point drawn) {
    return new Point(
        cosine * drawn.x() - sine * drawn.y() + shift.x(),
        sine * drawn.x() + cosine * drawn.y() + shift.y());
  }

  /**
   * Where a direction fixed in the body goes.
   *
   * @param drawn the direction in the drawn place
   * @return the turned direction
   */
  public Direction apply(Direction drawn) {
    return Direction.from(
        cosine * drawn.x() - sine * drawn.y(), sine * drawn.x() + cosine * drawn.y());
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

  @Override
  public boolean equals(Object other) {
    return other instanceof Frame frame
        && shift.equals(frame.shift)
        && Double.compare(turn, frame.turn) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * shift.hashCode() + Double.hashCode(turn);
  }

  @Override
  public String toString() {
    return "Frame[shift=" + shift + ", turn=" + turn + "]";
  }
}
