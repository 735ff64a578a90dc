package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;

/**
 * Two directions square to one another into which a force is usually resolved.
 *
 * @param first direction of the first component
 * @param firstName word for it, such as {@code x} or {@code normal}
 * @param second direction of the second component
 * @param secondName word for it, such as {@code y} or {@code friction}
 */
public record Resolution(Direction first, String firstName, Direction second, String secondName) {

  /** To the right and up. */
  public static final Resolution AXES = new Resolution(Direction.RIGHT, "x", Direction.UP, "y");

  /**
   * Square to a surface, and along it to the right of the push.
   *
   * @param push direction in which the surface pushes
   * @return normal force and friction
   */
  public static Resolution surface(Direction push) {
    return new Resolution(push, "normal", push.perpendicular().opposite(), "friction");
  }
}
