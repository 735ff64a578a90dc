package bellcrank.statics.device;

import java.util.OptionalDouble;

/**
 * A bar or a line from one point to another, and possibly a place on it.
 *
 * @param start name of the point where it starts
 * @param end name of the point where it ends, another one
 * @param distance of the place from the start in m, 0 or more; empty if the line as a whole is
 *     meant
 */
public record Stretch(String start, String end, OptionalDouble distance) {

  /**
   * Checks the fields.
   *
   * @param start name of the point where it starts
   * @param end name of the point where it ends
   * @param distance from the start in m, or empty
   * @throws ModelException if a name is not acceptable, both ends are the same point, or the
   *     distance is negative or not finite
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
    }
  }
}
