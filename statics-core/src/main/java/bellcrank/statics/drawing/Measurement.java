package bellcrank.statics.drawing;

/** What is measured in a drawing. */
public sealed interface Measurement {

  /** The way in which a distance is measured. */
  enum Way {
    /** Straight from point to point. */
    STRAIGHT,
    /** To the right. */
    LEVEL,
    /** Up. */
    UPRIGHT
  }

  /**
   * A distance between two points.
   *
   * @param from name of a point of the device
   * @param to name of another point
   * @param way how it is measured
   */
  record Distance(String from, String to, Way way) implements Measurement {}

  /**
   * The angle at a point between the ways to two others, less than half a turn.
   *
   * @param at name of the point
   * @param first name of the point on one side
   * @param second name of the point on the other
   */
  record Angle(String at, String first, String second) implements Measurement {}
}
