package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * The bearing factors of EN 1997-1:2004 Annex D.4, for drained ground.
 *
 * <p>Tables that go by other authors agree in N_c and N_q, and differ by half in N_γ: do not mix
 * them. The factors of the older theory by Terzaghi are larger in N_c and N_q and have other shape
 * factors.
 */
public final class BearingFactors {

  private static final String PART = "ground";

  private BearingFactors() {}

  /**
   * Factor of the overburden: N_q = e^(π tan φ')·tan²(45° + φ'/2).
   *
   * @param frictionAngle angle of friction φ' in rad, 0 to π/3, bounds included
   * @return 1 or more
   * @throws ModelException if the angle is out of its range
   */
  public static double nQ(double frictionAngle) {
    return 1 + nQLessOne(frictionAngle);
  }

  /**
   * Factor of the cohesion: N_c = (N_q − 1)·cot φ', which tends to π + 2 where φ' is 0.
   *
   * @param frictionAngle angle of friction φ' in rad, 0 to π/3, bounds included
   * @return π + 2 or more
   * @throws ModelException if the angle is out of its range
   */
  public static double nC(double frictionAngle) {
    double surplus = nQLessOne(frictionAngle);
    return frictionAngle == 0 ? Math.PI + 2 : surplus / Math.tan(frictionAngle);
  }

  /**
   * Factor of the weight of the ground below a rough base: N_γ = 2(N_q − 1)·tan φ'.
   *
   * @param frictionAngle angle of friction φ' in rad, 0 to π/3, bounds included
   * @return 0 or more
   * @throws ModelException if the angle is out of its range
   */
  public static double nGamma(double frictionAngle) {
    return 2 * nQLessOne(frictionAngle) * Math.tan(frictionAngle);
  }

  /** N_q − 1, exact for small angles too, since ln tan(45° + φ/2) = artanh sin φ. */
  static double nQLessOne(double frictionAngle) {
    Check.frictionAngle(PART, frictionAngle);
    double sine = Math.sin(frictionAngle);
    double logTanSquared = Math.log1p(sine) - Math.log1p(-sine);
    return Math.expm1(Math.PI * Math.tan(frictionAngle) + logTanSquared);
  }
}
