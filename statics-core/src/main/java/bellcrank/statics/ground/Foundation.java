package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/**
 * What the ground under one contact base of a device is like.
 *
 * @param base name of the contact base
 * @param length length L of the base out of the plane in m, above 0
 * @param bearing what the ground bears; empty if it is taken not to give
 * @param adhesion force per effective area that holds against sliding besides friction, in Pa, 0 or
 *     more
 * @param cleat a cleat under the base, if it has one
 */
public record Foundation(
    String base, double length, Optional<Bearing> bearing, double adhesion, Optional<Cleat> cleat) {

  /**
   * Checks the fields.
   *
   * @param base name of the contact base
   * @param length length L of the base out of the plane in m, above 0
   * @param bearing what the ground bears; empty if it is taken not to give
   * @param adhesion force per effective area that holds against sliding besides friction, in Pa, 0
   *     or more
   * @param cleat a cleat under the base, if it has one
   * @throws ModelException if a field is out of its range or the name is blank
   */
  public Foundation {
    Check.text("foundation", "base", base);
    Check.positive(base, "length", length);
    adhesion = Check.notNegative(base, "adhesion", adhesion);
  }

  /**
   * A base on ground that does not give, with friction alone against sliding.
   *
   * @param base name of the contact base
   * @param length length L of the base out of the plane in m, above 0
   * @return the foundation
   * @throws ModelException if the length is not above 0 or the name is blank
   */
  public static Foundation of(String base, double length) {
    return new Foundation(base, length, Optional.empty(), 0, Optional.empty());
  }

  /**
   * The same base on ground that bears only so much.
   *
   * @param ground what the ground bears
   * @return a copy with it
   */
  public Foundation withBearing(Bearing ground) {
    return new Foundation(base, length, Optional.of(ground), adhesion, cleat);
  }

  /**
   * The same base with another adhesion.
   *
   * @param pressure force per effective area that holds against sliding besides friction, in Pa, 0
   *     or more
   * @return a copy with it
   * @throws ModelException if it is negative or not finite
   */
  public Foundation withAdhesion(double pressure) {
    return new Foundation(base, length, bearing, pressure, cleat);
  }

  /**
   * The same base with a cleat.
   *
   * @param spade the cleat
   * @return a copy with it
   */
  public Foundation withCleat(Cleat spade) {
    return new Foundation(base, length, bearing, adhesion, Optional.of(spade));
  }

  /**
   * A load on this base.
   *
   * @param normal normal force in N, pushing, 0 or more
   * @param tangential force along the width in N, positive to the right
   * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
   *     positive with the push upwards
   * @param width width of the contact base in m, above 0
   * @return the load, with the length of this foundation
   * @throws ModelException if a value is out of its range or not finite
   */
  public BaseLoad load(double normal, double tangential, double couple, double width) {
    return new BaseLoad(normal, tangential, couple, width, length);
  }

  /**
   * The tangential force at which the base begins to slide: μN, adhesion on the effective area, and
   * the cleat, all at their full value at once.
   *
   * @param friction coefficient of friction μ between base and ground, 0 or more
   * @param load what the base sends into the ground
   * @return in N, 0 or more; a cleat counts even without a normal force
   * @throws ModelException if the coefficient is negative or not finite, or if the load is on a
   *     base of another length
   */
  public double slidingResistance(double friction, BaseLoad load) {
    Check.notNegative(base, "friction", friction);
    if (load.length() != length) {
      throw new ModelException(
          base, "length of the load", load.length(), "that of the foundation, " + length);
    }
    double held = friction * load.normal() + adhesion * EffectiveBase.from(load).area();
    return cleat.isPresent() ? held + cleat.get().resistance(length) : held;
  }
}
