package bellcrank.statics.device;

/**
 * A pin seen as a particle: two equations of balance. Truss joints, knots and rings are joints.
 *
 * @param name name, unique among the bodies
 * @param at name of its point
 */
public record Joint(String name, String at) implements Body {

  /**
   * Checks the name.
   *
   * @param name name, unique among the bodies
   * @param at name of its point
   * @throws ModelException if the name is not acceptable
   */
  public Joint {
    Check.name("joint", name);
  }
}
