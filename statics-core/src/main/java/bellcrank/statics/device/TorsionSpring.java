package bellcrank.statics.device;

import java.util.List;

/**
 * A spring that turns two bodies against one another. Its couple on {@code body} is −stiffness
 * times the angle by which that body is turned against the other from the relaxed state.
 *
 * @param name name, unique among connections and loads
 * @param body name of a member
 * @param other name of another member, or {@code ground}
 * @param stiffness in N·m/rad, above 0
 * @param turned angle in rad by which {@code body} is turned in the drawn pose, counter-clockwise
 *     positive
 */
public record TorsionSpring(String name, String body, String other, double stiffness, double turned)
    implements Load {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param body name of a member
   * @param other name of another member, or {@code ground}
   * @param stiffness in N·m/rad, above 0
   * @param turned angle in rad by which {@code body} is turned in the drawn pose, counter-clockwise
   *     positive
   * @throws ModelException if a field is not acceptable
   */
  public TorsionSpring {
    Check.name("torsion spring", name);
    Check.different(name, "joins", List.of(body, other), 2);
    Check.positive(name, "torsion spring", stiffness);
    turned = Check.finite(name, "turned", turned);
  }
}
