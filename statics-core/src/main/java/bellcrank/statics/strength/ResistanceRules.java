package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;

/** The rules of the method of design resistances. */
final class ResistanceRules {

  private static final Factor YIELDING = new Factor(1.0, "partial factor γ_M0");
  private static final Factor BUCKLING = new Factor(1.0, "partial factor γ_M1");
  private static final Factor RUPTURE = new Factor(1.25, "partial factor γ_M2");

  /** Strengths of timber are characteristic ones. */
  private static final Factor TIMBER =
      new Factor(
          1.3 / 0.6, "γ_M/k_mod of timber, 1.3/0.6 for lasting loads: EN 1995-1-1, from memory");

  private ResistanceRules() {}

  private static <D> Rule<D> rule(
      Check<D> check, String formula, Factor factor, String source, Law<D> law) {
    return new Rule<>(check, Method.RESISTANCE, formula, factor, source, law);
  }

  private static <D> Rule<D> timber(
      Check<D> check, String formula, Factor factor, String source, Law<D> law) {
    return rule(check, formula, factor, source, law).withTimber(TIMBER);
  }

  static Rules make() {
    ColumnLaw column = new ColumnLaw(new ColumnCurve.Perry());
    return StatedLimits.of(Method.RESISTANCE)
        .with(
            timber(
                Check.TOP_FACE,
                "|N/A − M·c_top/I| ≤ f_y/γ_M0",
                YIELDING,
                "EN 1993-1-1:2005, 6.2.1(5), elastic",
                new FaceLaw(true)))
        .with(
            timber(
                Check.BOTTOM_FACE,
                "|N/A + M·c_bottom/I| ≤ f_y/γ_M0",
                YIELDING,
                "EN 1993-1-1:2005, 6.2.1(5), elastic",
                new FaceLaw(false)))
        .with(
            timber(
                Check.SHEAR,
                "V·Q/(I·t) ≤ f_y/√3/γ_M0",
                YIELDING,
                "EN 1993-1-1:2005, 6.2.6(4)",
                new ShearLaw(1 / Math.sqrt(3))))
        .with(
            timber(
                Check.COLUMN,
                "N ≤ χ·A·f_y/γ_M1",
                BUCKLING,
                "EN 1993-1-1:2005, 6.3.1 for steel; timber: EN 1995-1-1, 6.3.2, from memory",
                column))
        .with(
            timber(
                Check.EULER,
                "N ≤ π²·E·I/(k·L)²/γ_M1",
                BUCKLING,
                "Euler; N_cr of EN 1993-1-1:2005, 6.3.1",
                new EulerLaw()))
        .with(
            timber(
                Check.COLUMN_AND_BENDING,
                "N/N_b + k·M/M_el ≤ 1/γ_M1, k = 1/(1 − N/N_cr)",
                BUCKLING,
                "shape of EN 1993-1-1:2005, 6.3.3, with one enlarging factor for all cases; common"
                    + " practice, no source",
                new ColumnAndBendingLaw(column)))
        .with(
            rule(
                Check.PIN_SHEAR,
                "F/(n·π·d²/4) ≤ 0.6·f_up/γ_M2",
                RUPTURE,
                "EN 1993-1-8:2005, Table 3.10",
                new PinShearLaw(Strength.ULTIMATE, 0.6)))
        .with(
            rule(
                Check.PIN_BENDING,
                "M/W ≤ 1.5·f_yp/γ_M0, M = F·(b + 4c + 2a)/8",
                YIELDING,
                "EN 1993-1-8:2005, Table 3.10 and Figure 3.11",
                new PinBendingLaw(1.5)))
        .with(
            rule(
                Check.BEARING,
                "F/(n·d·t) ≤ 1.5·f_y/γ_M0",
                YIELDING,
                "EN 1993-1-8:2005, Table 3.10",
                new PlateLaw(PlateLaw.Place.HOLE, Strength.YIELD, 1.5)))
        .with(
            rule(
                Check.TEAR_OUT,
                "F/(n·2·t·(e − d₀/2)) ≤ f_y/√3/γ_M0",
                YIELDING,
                "EN 1993-1-8:2005, 3.10.2, the sheared planes alone; from memory",
                new PlateLaw(PlateLaw.Place.END, Strength.YIELD, 1 / Math.sqrt(3))))
        .with(
            rule(
                Check.NET_SECTION,
                "F/(n·t·(b − d₀)) ≤ 0.9·f_u/γ_M2",
                RUPTURE,
                "EN 1993-1-1:2005, 6.2.3(2)",
                new PlateLaw(PlateLaw.Place.SIDES, Strength.ULTIMATE, 0.9)))
        .with(
            rule(
                Check.WELD,
                "f/a ≤ f_u/(√3·β_w·γ_M2)",
                RUPTURE,
                "EN 1993-1-8:2005, 4.5.3.3",
                new WeldLaw(WeldLaw.Metal.JOINED_PARTS)));
  }
}
