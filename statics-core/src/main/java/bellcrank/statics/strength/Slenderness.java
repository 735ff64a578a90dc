package bellcrank.statics.strength;

/**
 * The slenderness of a column in the plane in which it buckles first. A section whose axes are
 * askew buckles about its weak principal axis; the longer of both effective lengths counts then.
 *
 * @param ratio effective length over radius of gyration, above 0
 * @param length the effective length in m
 * @param way which way it buckles, in words
 */
record Slenderness(double ratio, double length, String way) {

  static Slenderness of(ColumnDemand demand) {
    Section section = demand.sized().section();
    double own = demand.ends().inPlane() * demand.length();
    double side = demand.ends().side() * demand.length();
    if (!section.symmetric()) {
      double longer = Math.max(own, side);
      return new Slenderness(longer / section.leastGyration(), longer, " about the weak axis, ");
    }
    double inPlane = own / section.gyration();
    double outOfPlane = side / section.sideGyration();
    return inPlane >= outOfPlane
        ? new Slenderness(inPlane, own, " in the plane, ")
        : new Slenderness(outOfPlane, side, " out of the plane, ");
  }

  /** Euler's stress π²E/λ². */
  double eulerStress(Material material) {
    return Math.PI * Math.PI * material.elasticity() / (ratio * ratio);
  }

  String words(ColumnDemand demand, Amounts amounts) {
    return "effective length "
        + amounts.length(length)
        + way
        + demand.ends().statement()
        + ", slenderness "
        + amounts.number(ratio);
  }
}
