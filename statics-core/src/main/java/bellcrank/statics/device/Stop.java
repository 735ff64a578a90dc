package bellcrank.statics.device;

/**
 * A station of a rope: where it ends or runs round something.
 *
 * @param kind what the rope does there
 * @param body name of the body that carries it
 * @param at name of the point: the end, or the centre of the sheave, drum or post
 * @param radius radius to the middle of the rope in m, 0 or more; 0 is a point, which an end is
 * @param turn the way the rope runs round, seen when following it from the first stop to the last
 */
public record Stop(Kind kind, String body, String at, double radius, Turn turn) {

  /** What a rope does at a stop. */
  public enum Kind {
    /** It ends there. */
    END,
    /** It is wound on a drum that is fixed to the body. */
    DRUM,
    /** It runs round a sheave that turns freely on the body. */
    SHEAVE,
    /** It rubs round a post that is fixed to the body. */
    POST
  }

  /**
   * Checks the radius.
   *
   * @param kind what the rope does there
   * @param body name of the body that carries it
   * @param at name of the point: the end, or the centre of the sheave, drum or post
   * @param radius radius to the middle of the rope in m, 0 or more; 0 is a point, which an end is
   * @param turn the way the rope runs round, seen when following it from the first stop to the last
   * @throws ModelException if it is negative or not finite, if a drum has none, or if an end has
   *     one
   */
  public Stop {
    if (kind == Kind.END && radius != 0) {
      throw new ModelException("end at " + at, "radius", radius, "0: a plain end has no radius");
    }
    radius = Check.notNegative("stop at " + at, "radius", radius);
    if (kind == Kind.DRUM) {
      Check.positive("drum at " + at, "radius", radius);
    }
  }

  /**
   * A plain end of the rope.
   *
   * @param body name of the body
   * @param at name of the point
   * @return the stop
   */
  public static Stop end(String body, String at) {
    return new Stop(Kind.END, body, at, 0, Turn.CLOCKWISE);
  }

  /**
   * A free sheave.
   *
   * @param body name of the body that carries it
   * @param at name of its centre
   * @param radius to the middle of the rope, in m, 0 or more
   * @param turn the way the rope runs round
   * @return the stop
   * @throws ModelException if the radius is negative or not finite
   */
  public static Stop sheave(String body, String at, double radius, Turn turn) {
    return new Stop(Kind.SHEAVE, body, at, radius, turn);
  }

  /**
   * A drum on which an end of the rope is wound.
   *
   * @param body name of the body to which it is fixed
   * @param at name of its centre
   * @param radius to the middle of the rope, in m, above 0
   * @param turn the way the rope runs round
   * @return the stop
   * @throws ModelException if the radius is not above 0
   */
  public static Stop drum(String body, String at, double radius, Turn turn) {
    return new Stop(Kind.DRUM, body, at, radius, turn);
  }
}
