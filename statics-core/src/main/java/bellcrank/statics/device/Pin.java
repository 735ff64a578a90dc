package bellcrank.statics.device;

import java.util.Collections;
import java.util.List;

/**
 * A pin through two or more bodies: two force components on each.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param bodies names of the bodies it goes through, two or more; the ground may be one
 * @param radius radius of the bearing in m, 0 if it does not matter
 * @param friction coefficient of friction in the bearing, 0 for a smooth pin
 */
public record Pin(String name, String at, List<String> bodies, double radius, double friction)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param bodies names of the bodies it goes through, two or more; the ground may be one
   * @param radius radius of the bearing in m, 0 if it does not matter
   * @param friction coefficient of friction in the bearing, 0 for a smooth pin
   * @throws ModelException if a field is not acceptable
   */
  public Pin {
    Check.name("pin", name);
    bodies = Check.different(name, "joins", bodies, 2);
    Check.notNegative(name, "radius", radius);
    Check.friction(name, "friction", friction);
    if (friction > 0 && radius == 0) {
      throw new ModelException(name, "radius", radius, "a radius above 0, since there is friction");
    }
  }

  /**
   * A smooth pin.
   *
   * @param name name
   * @param at name of its point
   * @param bodies names of the bodies
   * @return the pin
   * @throws ModelException if a name is not acceptable or fewer than two bodies are named
   */
  public static Pin smooth(String name, String at, List<String> bodies) {
    return new Pin(name, at, bodies, 0, 0);
  }

  @Override
  public List<String> places() {
    return Collections.nCopies(bodies.size(), at);
  }

  @Override
  public String kind() {
    return "pin";
  }
}
