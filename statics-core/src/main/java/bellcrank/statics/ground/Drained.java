package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * Bearing resistance of ground in which the water has had time to drain, for a level base on level
 * ground, after EN 1997-1:2004 Annex D.4, without partial factors:
 *
 * <p>R/A' = c' N_c s_c i_c + q' N_q s_q i_q + ½ γ' B' N_γ s_γ i_γ, with shape factors of a
 * rectangle s_q = 1 + (B'/L') sin φ', s_γ = 1 − 0.3 B'/L', s_c = (s_q N_q − 1)/(N_q − 1), and
 * inclination factors i_q = (1 − H/(N + A' c' cot φ'))^m, i_γ the same to the power m + 1, i_c =
 * i_q − (1 − i_q)/(N_c tan φ').
 *
 * <p>B' is the shorter side of the effective area in all of these, L' the longer one: where the
 * width in the plane is the longer they change places, and m is the Annex's m_L instead of its m_B,
 * since the force acts along the width. An i_c below 0 counts as 0. Whether the base slides is
 * another question, see {@link Foundation#slidingResistance}.
 *
 * @param frictionAngle angle of friction φ' in rad, above 0, at most π/3
 * @param cohesion effective cohesion c' in Pa, 0 or more
 * @param weight effective unit weight γ' of the ground below the base in N/m³, 0 or more; under
 *     water, that of the ground less that of the water
 * @param overburden effective pressure q' of the ground beside the base, at the level of the base,
 *     in Pa, 0 or more
 */
public record Drained(double frictionAngle, double cohesion, double weight, double overburden)
    implements Bearing {

  private static final String PART = "drained ground";

  /**
   * Checks the fields.
   *
   * @param frictionAngle angle of friction φ' in rad, above 0, at most π/3; for 0 take {@link
   *     Undrained}
   * @param cohesion effective cohesion c' in Pa, 0 or more
   * @param weight effective unit weight γ' of the ground below the base in N/m³, 0 or more
   * @param overburden effective pressure q' of the ground beside the base, at the level of the
   *     base, in Pa, 0 or more
   * @throws ModelException if a field is out of its range or not finite
   */
  public Drained {
    if (frictionAngle == 0) {
      throw new ModelException(
          PART,
          "friction angle",
          frictionAngle,
          "an angle above 0; ground without friction is undrained ground with a shear strength");
    }
    Check.frictionAngle(PART, frictionAngle);
    cohesion = Check.notNegative(PART, "cohesion", cohesion);
    weight = Check.notNegative(PART, "unit weight", weight);
    overburden = Check.notNegative(PART, "overburden", overburden);
  }

  @Override
  public double resistance(BaseLoad load) {
    EffectiveBase base = EffectiveBase.from(load);
    double area = base.area();
    double tan = Math.tan(frictionAngle);
    // H/(N + A'c' cot φ'), made longer by tan φ' so that it stays finite for small angles
    double slope = Math.abs(load.tangential()) * tan / (load.normal() * tan + area * cohesion);
    if (area == 0 || !(slope < 1)) {
      return 0;
    }
    double surplus = BearingFactors.nQLessOne(frictionAngle);
    double nQ = BearingFactors.nQ(frictionAngle);

    double sine = base.ratio() * Math.sin(frictionAngle);
    double sQ = 1 + sine;
    double sC = 1 + sine * nQ / surplus;
    double sGamma = 1 - 0.3 * base.ratio();

    double logLeft = Math.log1p(-slope);
    double lost = -Math.expm1(base.exponent() * logLeft);
    double iQ = 1 - lost;
    double iC = Math.max(0, iQ - lost / surplus);
    double iGamma = Math.exp((base.exponent() + 1) * logLeft);

    double ofCohesion = cohesion * BearingFactors.nC(frictionAngle) * sC * iC;
    double ofOverburden = overburden * nQ * sQ * iQ;
    double ofWeight =
        weight * base.shorter() / 2 * BearingFactors.nGamma(frictionAngle) * sGamma * iGamma;
    return area * (ofCohesion + ofOverburden + ofWeight);
  }

  @Override
  public String source() {
    return "EN 1997-1:2004, Annex D.4";
  }
}
