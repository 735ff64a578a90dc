package bellcrank.statics.ground;

/**
 * The part of a base that has the resultant in its middle.
 *
 * <p>EN 1997-1:2004 Annex D calls B' the shorter side and L' the longer one. Here {@code across} is
 * the side along which the tangential force acts, whichever is shorter.
 *
 * @param across effective width in the plane in m, 0 or more
 * @param along length out of the plane in m, above 0
 */
record EffectiveBase(double across, double along) {

  static EffectiveBase from(BaseLoad load) {
    return new EffectiveBase(load.pressure().effectiveWidth(), load.length());
  }

  double area() {
    return across * along;
  }

  double shorter() {
    return Math.min(across, along);
  }

  /** B'/L' of the Annex, 0 to 1. */
  double ratio() {
    return shorter() / Math.max(across, along);
  }

  /**
   * The exponent m of the inclination factors. The Annex has m_B = (2 + B'/L')/(1 + B'/L') for a
   * force along B' and m_L with L'/B' for one along L': both are this one, for the force is always
   * along {@code across}.
   */
  double exponent() {
    double slenderness = across / along;
    return (2 + slenderness) / (1 + slenderness);
  }
}
