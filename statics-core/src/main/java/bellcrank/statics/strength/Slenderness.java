package bellcrank.statics.strength;

/**
 * The slenderness of a column in the plane in which it buckles first.
 *
 * @param ratio effective length over radius of gyration, above 0
 * @param length the effective length in m
 * @param inPlane whether it buckles in the plane of the device
 */
record Slenderness(double ratio, double length, boolean inPlane) {

  static Slenderness of(ColumnDemand demand) {
    Section section = demand.sized().section();
    double own = demand.ends().inPlane() * demand.length();
    double side = demand.ends().side() * demand.length();
    double inPlane = own / section.gyration();
    double outOfPlane = side / section.sideGyration();
    return inPlane >= outOfPlane
        ? new Slenderness(inPlane, own, true)
        : new Slenderness(outOfPlane, side, false);
  }

  /** Euler's stress π²E/λ². */
  double eulerStress(Material material) {
    return Math.PI * Math.PI * material.elasticity() / (ratio * ratio);
  }

  String words(ColumnDemand demand, Amounts amounts) {
    return "effective length "
        + amounts.length(length)
        + (inPlane ? " in the plane, " : " out of the plane, ")
        + demand.ends().statement()
        + ", slenderness "
        + amounts.number(ratio);
  }
}
