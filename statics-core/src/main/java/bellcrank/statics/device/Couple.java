package bellcrank.statics.device;

import java.util.Optional;

/**
 * A couple on a member, or one that turns a screw about the screw's own axis. The latter is square
 * to the plane: it has no part in the balance of the members, and only the thread ties it to the
 * axial force.
 *
 * @param name name, unique among connections and loads
 * @param member name of the member, or of a screw if no body has that name
 * @param moment in N·m; on a member counter-clockwise positive, on a screw positive if it drives
 *     the screw's two ends apart
 * @param at name of the point of the member where it is applied, for the forces inside the member;
 *     balance does not depend on it. Empty if it is not stated; always empty on a screw
 */
public record Couple(String name, String member, double moment, Optional<String> at)
    implements Load {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param member name of the member, or of a screw if no body has that name
   * @param moment in N·m; on a member counter-clockwise positive, on a screw positive if it drives
   *     the screw's two ends apart
   * @param at name of the point where it is applied, or empty
   * @throws ModelException if the name is not acceptable or the moment is not finite
   */
  public Couple {
    Check.name("couple", name);
    moment = Check.finite(name, "couple", moment);
  }

  /**
   * A couple whose place is not stated.
   *
   * @param name name, unique among connections and loads
   * @param member name of the member, or of a screw if no body has that name
   * @param moment in N·m, as above
   * @throws ModelException if the name is not acceptable or the moment is not finite
   */
  public Couple(String name, String member, double moment) {
    this(name, member, moment, Optional.empty());
  }
}
