package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;

/**
 * A known force on a body.
 *
 * @param part name of the connection or load that it comes from
 * @param symbol what it is called in a drawing: the part, with the component if it is one
 * @param on name of the body on which it acts
 * @param origin where it comes from
 * @param at where it acts, in m, in the world
 * @param vector components in N, x to the right, y up
 * @param resolution components into which it is usually resolved; empty for a force whose line is
 *     given
 */
public record ActingForce(
    String part,
    String symbol,
    String on,
    Origin origin,
    Point at,
    Vector vector,
    Optional<Resolution> resolution) {

  /**
   * Size of the force.
   *
   * @return in N, 0 or more
   */
  public double size() {
    return vector.norm();
  }

  /**
   * Its two components, each a force at the same place.
   *
   * @return the force alone if it is not resolved
   */
  public List<ActingForce> components() {
    return resolution
        .map(
            two ->
                List.of(
                    component(two.first(), two.firstName()),
                    component(two.second(), two.secondName())))
        .orElseGet(() -> List.of(this));
  }

  private ActingForce component(Direction along, String name) {
    double size = vector.x() * along.x() + vector.y() * along.y();
    return new ActingForce(
        part, symbol + "." + name, on, origin, at, along.times(size), Optional.empty());
  }
}
