package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.Optional;

/**
 * An effort that is asked for: its size is an unknown of the balance. It holds the device in
 * balance but does not count as a restraint for mobility, travel or advantage.
 *
 * @param name name, unique among connections and loads
 * @param want what is sought
 * @param body name of the member, joint or pin on which it acts; a member for an intensity; for a
 *     couple a member, or a screw if no body has that name
 * @param at name of the point where it acts, or where an intensity starts; of a couple on a member,
 *     the point where it is applied, for the forces inside the member. Empty only for a couple
 * @param direction for a force or intensity: the direction of a positive size; empty otherwise
 * @param to for an intensity: name of the point where it ends; empty otherwise
 */
public record Sought(
    String name,
    Want want,
    String body,
    Optional<String> at,
    Optional<Direction> direction,
    Optional<String> to)
    implements Load {

  /** What is sought. */
  public enum Want {
    /** The size of a force of given line and sense; negative means the other sense. */
    FORCE,
    /** Both components of a force. */
    COMPONENTS,
    /**
     * A couple, counter-clockwise positive; on a screw the one about its own axis, positive if it
     * drives the screw's two ends apart.
     */
    COUPLE,
    /** A mass whose weight acts at the point. */
    MASS,
    /** The intensity of a load that is spread evenly along a segment, in N/m. */
    INTENSITY
  }

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param want what is sought
   * @param body name of the member, joint or pin on which it acts
   * @param at name of the point where it acts or starts; empty only for a couple
   * @param direction for a force or intensity: the direction of a positive size
   * @param to for an intensity: name of the point where it ends
   * @throws ModelException if a field is missing, is too much, or is not acceptable
   */
  public Sought {
    Check.name("sought quantity", name);
    if (at.isEmpty() && want != Want.COUPLE) {
      throw new ModelException(name, "at", "missing", "a point, unless a couple is sought");
    }
    if (direction.isPresent() != (want == Want.FORCE || want == Want.INTENSITY)) {
      throw new ModelException(
          name,
          "direction",
          direction.isPresent() ? "given" : "missing",
          "a direction for a force or intensity, none for anything else");
    }
    if (to.isPresent() != (want == Want.INTENSITY)) {
      throw new ModelException(
          name,
          "to",
          to.orElse("missing"),
          "an end point for an intensity, none for anything else");
    }
  }

  /**
   * A sought quantity that is not spread.
   *
   * @param name name, unique among connections and loads
   * @param want what is sought, not an intensity
   * @param body name of the member, joint or pin on which it acts
   * @param at name of the point where it acts; empty only for a couple
   * @param direction for a force: the direction of a positive size; empty otherwise
   * @throws ModelException if a field is missing, is too much, or is not acceptable
   */
  public Sought(
      String name, Want want, String body, Optional<String> at, Optional<Direction> direction) {
    this(name, want, body, at, direction, Optional.empty());
  }
}
