package bellcrank.statics.device;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bar or a line from one point to another, and possibly a place on it.
 *
 * @param start name of the point where it starts
 * @param end name of the point where it ends, another one
 * @param distance of the place from the start in m, 0 or more; empty if the line as a whole is
 *     meant
 * @param side on which side of the place, for what jumps there; empty if neither is meant
 */
public record Stretch(String start, String end, OptionalDouble distance, Optional<Side> side) {

  /**
   * Checks the fields.
   *
   * @param start name of the point where it starts
   * @param end name of the point where it ends
   * @param distance from the start in m, or empty
   * @param side on which side of the place, or empty
   * @throws ModelException if a name is not acceptable, both ends are the same point, the distance
   *     is negative or not finite, or there is a side but no distance
   */
  public Stretch {
    Check.name("ask", start);
    Check.name("ask", end);
    if (start.equals(end)) {
      throw new ModelException("ask", "ends", Check.quote(end), "two different points");
    }
    if (distance.isPresent()) {
      distance =
          OptionalDouble.of(Check.notNegative("ask", "distance in m", distance.getAsDouble()));
    } else if (side.isPresent()) {
      throw new ModelException("ask", "side", side.get().word(), "a place to be at a side of");
    }
  }

  /**
   * A line, or a place on a bar of which no side is meant.
   *
   * @param start name of the point where it starts
   * @param end name of the point where it ends
   * @param distance from the start in m, or empty
   * @throws ModelException if a name is not acceptable, both ends are the same point, or the
   *     distance is negative or not finite
   */
  public Stretch(String start, String end, OptionalDouble distance) {
    this(start, end, distance, Optional.empty());
  }
}
