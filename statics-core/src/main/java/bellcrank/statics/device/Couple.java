package bellcrank.statics.device;

/**
 * A couple on a member.
 *
 * @param name name, unique among connections and loads
 * @param member name of the member
 * @param moment in N·m, counter-clockwise positive
 */
public record Couple(String name, String member, double moment) implements Load {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param member name of the member
   * @param moment in N·m, counter-clockwise positive
   * @throws ModelException if the name is not acceptable or the moment is not finite
   */
  public Couple {
    Check.name("couple", name);
    moment = Check.finite(name, "couple", moment);
  }
}
