package bellcrank.statics.device;

import bellcrank.statics.geometry.Vector;

/**
 * A force that keeps its size and direction.
 *
 * @param name name, unique among connections and loads
 * @param body name of the member, joint or pin on which it acts
 * @param at name of the point where it acts
 * @param vector components in N
 */
public record Force(String name, String body, String at, Vector vector) implements Load {

  /**
   * Checks the name.
   *
   * @param name name, unique among connections and loads
   * @param body name of the member, joint or pin on which it acts
   * @param at name of the point where it acts
   * @param vector components in N
   * @throws ModelException if the name is not acceptable
   */
  public Force {
    Check.name("force", name);
    Check.finite(name, "force", vector.x());
    Check.finite(name, "force", vector.y());
  }
}
