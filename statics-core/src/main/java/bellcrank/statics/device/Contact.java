package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.List;

/**
 * A point that presses against the surface of another body: a normal force of 0 or more and
 * friction of at most μN.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 * @param push outward normal of the surface of {@code other}, which is the direction of the normal
 *     force on {@code body}, as drawn
 * @param friction static coefficient of friction μ, 0 or more
 * @param kineticFriction kinetic coefficient, 0 to {@code friction}
 */
public record Contact(
    String name,
    String at,
    String body,
    String other,
    Direction push,
    double friction,
    double kineticFriction)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param body name of the body on which its force is reported
   * @param other name of the other body
   * @param push outward normal of the surface of {@code other}, which is the direction of the
   *     normal force on {@code body}, as drawn
   * @param friction static coefficient of friction μ, 0 or more
   * @param kineticFriction kinetic coefficient, 0 to {@code friction}
   * @throws ModelException if a field is not acceptable
   */
  public Contact {
    Check.name("contact", name);
    Check.different(name, "joins", List.of(body, other), 2);
    Check.friction(name, "friction", friction);
    Check.friction(name, "kinetic friction", kineticFriction);
    if (kineticFriction > friction) {
      throw new ModelException(
          name, "kinetic friction", kineticFriction, "at most the static one, " + friction);
    }
  }

  @Override
  public List<String> bodies() {
    return List.of(body, other);
  }

  @Override
  public List<String> places() {
    return List.of(at, at);
  }

  @Override
  public String kind() {
    return "contact";
  }
}
