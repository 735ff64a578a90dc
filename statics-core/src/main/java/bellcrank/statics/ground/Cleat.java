package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * A cleat or spade under a foot that leans against a wedge of ground in front of it.
 *
 * <p>Per metre of length it resists ½ K_p γ d² + 2 c √K_p d, with K_p = tan²(45° + φ/2). Source:
 * Rankine's passive pressure, in any textbook of soil mechanics; from memory. Assumed: the ground
 * in front is undisturbed and level, carries nothing, and is the same down to the tip; the wedge is
 * fully mobilised, which takes a movement of some hundredths of the depth; friction between cleat
 * and ground is neglected. The wedge lies on one side, so this holds against sliding that way only.
 *
 * @param depth depth d of the cleat below the surface of the ground in front, in m, above 0
 * @param frictionAngle angle of friction φ of the ground in rad, 0 to π/3, bounds included
 * @param cohesion cohesion c of the ground in Pa, 0 or more
 * @param weight unit weight γ of the ground in N/m³, 0 or more
 */
public record Cleat(double depth, double frictionAngle, double cohesion, double weight) {

  private static final String PART = "cleat";

  /**
   * Checks the fields.
   *
   * @param depth depth d of the cleat below the surface of the ground in front, in m, above 0
   * @param frictionAngle angle of friction φ of the ground in rad, 0 to π/3, bounds included
   * @param cohesion cohesion c of the ground in Pa, 0 or more
   * @param weight unit weight γ of the ground in N/m³, 0 or more
   * @throws ModelException if a field is out of its range or not finite
   */
  public Cleat {
    Check.positive(PART, "depth", depth);
    frictionAngle = Check.frictionAngle(PART, frictionAngle);
    cohesion = Check.notNegative(PART, "cohesion", cohesion);
    weight = Check.notNegative(PART, "unit weight", weight);
  }

  /**
   * The force that the wedge of ground resists.
   *
   * @param length length of the cleat out of the plane in m, above 0
   * @return in N, 0 or more
   * @throws ModelException if the length is not above 0
   */
  public double resistance(double length) {
    Check.positive(PART, "length", length);
    double root = Math.tan(Math.PI / 4 + frictionAngle / 2);
    return (root * root * weight * depth / 2 + 2 * cohesion * root) * depth * length;
  }
}
