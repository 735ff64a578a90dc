package bellcrank.statics.equilibrium;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;

/**
 * What a connection does to one of its bodies.
 *
 * @param connection name of the connection
 * @param kind word for its kind, such as {@code pin}
 * @param body name of the body on which it acts
 * @param at where it acts, in world coordinates
 * @param x component to the right, in N
 * @param y component up, in N
 * @param couple couple about that place in N·m, counter-clockwise positive; {@link Answer.Value} 0
 *     for kinds whose force goes through it. A rope has one where it runs over a drum, a sheave
 *     with losses, or several sheaves of the body
 * @param hasCouple whether the kind of connection carries a couple of its own
 * @param count number of equal parts that share it
 */
public record Reaction(
    String connection,
    String kind,
    String body,
    Point at,
    Answer x,
    Answer y,
    Answer couple,
    boolean hasCouple,
    int count) {

  /**
   * Size of the force.
   *
   * @return a value in N, or why there is none
   */
  public Answer size() {
    if (x instanceof Answer.Value a && y instanceof Answer.Value b) {
      return new Answer.Value(Math.hypot(a.si(), b.si()), Dimension.FORCE);
    }
    return x instanceof Answer.Value ? y : x;
  }
}
