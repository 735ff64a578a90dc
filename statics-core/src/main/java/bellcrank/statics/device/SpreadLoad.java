package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.Optional;

/**
 * A load spread along a straight segment of a member, varying linearly.
 *
 * @param name name, unique among connections and loads
 * @param member name of the member
 * @param from name of the point where it starts
 * @param to name of the point where it ends
 * @param start intensity at {@code from} in N/m
 * @param end intensity at {@code to} in N/m
 * @param direction direction of a positive intensity, which it keeps; if empty the load is square
 *     to the segment and a positive intensity pushes to the left of the way from {@code from} to
 *     {@code to}
 * @param per what the metres of the intensity are measured along
 */
public record SpreadLoad(
    String name,
    String member,
    String from,
    String to,
    double start,
    double end,
    Optional<Direction> direction,
    Per per)
    implements Load {

  /** What the metres of an intensity are measured along. */
  public enum Per {
    /** Along the segment. */
    LENGTH,
    /** Along the horizontal, as drawn: snow on a roof. */
    HORIZONTAL
  }

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param member name of the member
   * @param from name of the point where it starts
   * @param to name of the point where it ends
   * @param start intensity at {@code from} in N/m
   * @param end intensity at {@code to} in N/m
   * @param direction direction of a positive intensity, which it keeps; if empty the load is square
   *     to the segment and a positive intensity pushes to the left of the way from {@code from} to
   *     {@code to}
   * @param per what the metres of the intensity are measured along
   * @throws ModelException if a field is not acceptable
   */
  public SpreadLoad {
    Check.name("spread load", name);
    start = Check.finite(name, "spread", start);
    end = Check.finite(name, "spread", end);
    if (from.equals(to)) {
      throw new ModelException(name, "to", Check.quote(to), "another point than the start");
    }
  }
}
