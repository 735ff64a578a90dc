package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.Optional;

/**
 * An effort that is asked for: its size is an unknown of the balance. It holds the device in
 * balance but does not count as a restraint for mobility, travel or advantage.
 *
 * @param name name, unique among connections and loads
 * @param want what is sought
 * @param body name of the member, joint or pin on which it acts
 * @param at name of the point where it acts; empty only for a couple
 * @param direction for a force: the direction of a positive size; empty otherwise
 */
public record Sought(
    String name, Want want, String body, Optional<String> at, Optional<Direction> direction)
    implements Load {

  /** What is sought. */
  public enum Want {
    /** The size of a force of given line and sense; negative means the other sense. */
    FORCE,
    /** Both components of a force. */
    COMPONENTS,
    /** A couple, counter-clockwise positive. */
    COUPLE,
    /** A mass whose weight acts at the point. */
    MASS
  }

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param want what is sought
   * @param body name of the member, joint or pin on which it acts
   * @param at name of the point where it acts; empty only for a couple
   * @param direction for a force: the direction of a positive size; empty otherwise
   * @throws ModelException if a field is missing, is too much, or is not acceptable
   */
  public Sought {
    Check.name("sought quantity", name);
    if (at.isEmpty() != (want == Want.COUPLE)) {
      throw new ModelException(
          name, "at", at.orElse("missing"), "a point for a force or mass, none for a couple");
    }
    if (direction.isPresent() != (want == Want.FORCE)) {
      throw new ModelException(
          name,
          "direction",
          direction.isPresent() ? "given" : "missing",
          "a direction for a force, none for anything else");
    }
  }
}
