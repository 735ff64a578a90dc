package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.List;

/**
 * A flat foot of given width that presses against a surface: a normal force of 0 or more within its
 * width, friction of at most μN, and the couple that goes with the spread of pressure.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 * @param push outward normal of the surface of {@code other}, which is the direction of the normal
 *     force on {@code body}, as drawn
 * @param width width of the base in m, above 0, half to each side of its point
 * @param friction static coefficient of friction μ, 0 or more
 * @param kineticFriction kinetic coefficient, 0 to {@code friction}
 */
public record ContactBase(
    String name,
    String at,
    String body,
    String other,
    Direction push,
    double width,
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
   * @param width width of the base in m, above 0, half to each side of its point
   * @param friction static coefficient of friction μ, 0 or more
   * @param kineticFriction kinetic coefficient, 0 to {@code friction}
   * @throws ModelException if a field is not acceptable
   */
  public ContactBase {
    Check.name("contact base", name);
    Check.different(name, "joins", List.of(body, other), 2);
    Check.positive(name, "width", width);
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
    return "contact base";
  }
}
