package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * Bearing resistance of wet clay or silt loaded faster than it drains, for a level base on level
 * ground, after EN 1997-1:2004 Annex D.3, without partial factors:
 *
 * <p>R/A' = (π + 2) c_u s_c i_c + q, with s_c = 1 + 0.2 B'/L' and i_c = ½(1 + √(1 − H/(A' c_u))),
 * for H at most A' c_u; with more the resistance is 0. B' is the shorter side of the effective area
 * and L' the longer one, whichever of them lies in the plane.
 *
 * @param strength undrained shear strength c_u in Pa, above 0
 * @param overburden total pressure q of the ground beside the base, at the level of the base, in
 *     Pa, 0 or more
 */
public record Undrained(double strength, double overburden) implements Bearing {

  private static final String PART = "undrained ground";

  /**
   * Checks the fields.
   *
   * @param strength undrained shear strength c_u in Pa, above 0
   * @param overburden total pressure q of the ground beside the base, at the level of the base, in
   *     Pa, 0 or more
   * @throws ModelException if a field is out of its range or not finite
   */
  public Undrained {
    Check.positive(PART, "strength", strength);
    overburden = Check.notNegative(PART, "overburden", overburden);
  }

  @Override
  public double resistance(BaseLoad load) {
    EffectiveBase base = EffectiveBase.from(load);
    double share = Math.abs(load.tangential()) / (base.area() * strength);
    if (base.area() == 0 || !(share <= 1)) {
      return 0;
    }
    double shape = 1 + 0.2 * base.ratio();
    double inclination = (1 + Math.sqrt(1 - share)) / 2;
    return base.area() * ((Math.PI + 2) * strength * shape * inclination + overburden);
  }

  @Override
  public String source() {
    return "EN 1997-1:2004, Annex D.3";
  }
}
