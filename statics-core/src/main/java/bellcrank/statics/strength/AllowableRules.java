package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;

/** The rules of the method of allowable stresses. */
final class AllowableRules {

  private static final Factor YIELDING = new Factor(1.67, "safety factor Ω on yielding");
  private static final Factor BUCKLING = new Factor(1.67, "safety factor Ω on buckling");
  private static final Factor EULER = new Factor(23.0 / 12, "safety factor on Euler's load");
  private static final Factor RUPTURE = new Factor(2.00, "safety factor Ω on rupture");

  /**
   * Strengths of timber are characteristic ones: what the codes divide them by, and a load factor.
   */
  private static final Factor TIMBER =
      new Factor(
          3,
          "safety factor on characteristic strengths of timber: 1.3/0.6 as in EN 1995-1-1 for"
              + " lasting loads, times a load factor of 1.4; common practice, no source");

  private AllowableRules() {}

  private static <D> Rule<D> rule(
      Check<D> check, String formula, Factor factor, String source, Law<D> law) {
    return new Rule<>(check, Method.ALLOWABLE, formula, factor, source, law);
  }

  private static <D> Rule<D> timber(
      Check<D> check, String formula, Factor factor, String source, Law<D> law) {
    return rule(check, formula, factor, source, law).withTimber(TIMBER);
  }

  static Rules make() {
    ColumnLaw column = new ColumnLaw(new ColumnCurve.American());
    return StatedLimits.of(Method.ALLOWABLE)
        .with(
            timber(
                Check.TOP_FACE,
                "|N/A − M·c_top/I| ≤ f_y/Ω",
                YIELDING,
                "linear interaction of elastic stresses; Ω: AISC 360-16, D2 and F1",
                new FaceLaw(true)))
        .with(
            timber(
                Check.BOTTOM_FACE,
                "|N/A + M·c_bottom/I| ≤ f_y/Ω",
                YIELDING,
                "linear interaction of elastic stresses; Ω: AISC 360-16, D2 and F1",
                new FaceLaw(false)))
        .with(
            timber(
                Check.SHEAR,
                "V·Q/(I·t) ≤ 0.6·f_y/Ω",
                YIELDING,
                "AISC 360-16, G1 and G2.1 for the strength, from memory",
                new ShearLaw(0.6)))
        .with(
            timber(
                Check.COLUMN,
                "N ≤ F_cr·A/Ω",
                BUCKLING,
                "AISC 360-16, E3 for steel; timber: EN 1995-1-1, 6.3.2, from memory",
                column))
        .with(
            timber(
                Check.EULER,
                "N ≤ π²·E·I/(k·L)²/n",
                EULER,
                "Euler; the factor 23/12: AISC allowable stress design of 1989, E2, from memory",
                new EulerLaw()))
        .with(
            timber(
                Check.COLUMN_AND_BENDING,
                "N/N_b + k·M/M_el ≤ 1/Ω, k = 1/(1 − N/N_cr)",
                BUCKLING,
                "linear interaction with enlarged bending; common practice, no source",
                new ColumnAndBendingLaw(column)))
        .with(
            rule(
                Check.PIN_SHEAR,
                "F/(n·π·d²/4) ≤ 0.6·f_y/Ω",
                new Factor(1.5, "safety factor on shear of a pin"),
                "AISC allowable stress design of 1989, F4: 0.40·F_y; from memory",
                new PinShearLaw(Strength.YIELD, 0.6)))
        .with(
            rule(
                Check.PIN_BENDING,
                "M/W ≤ 1.25·f_y/Ω, M = F·(b + 4c + 2a)/8",
                YIELDING,
                "AISC allowable stress design of 1989, F2: 0.75·F_y, from memory; moment: EN"
                    + " 1993-1-8:2005, Figure 3.11",
                new PinBendingLaw(1.25)))
        .with(
            rule(
                Check.BEARING,
                "F/(n·d·t) ≤ 1.8·f_y/Ω",
                RUPTURE,
                "AISC 360-16, J7(a)",
                new PlateLaw(PlateLaw.Place.HOLE, Strength.YIELD, 1.8)))
        .with(
            rule(
                Check.TEAR_OUT,
                "F/(n·2·t·(e − d₀/2)) ≤ 0.6·f_u/Ω",
                RUPTURE,
                "AISC 360-16, D5.1(b), with the planes from the edge of the hole; from memory",
                new PlateLaw(PlateLaw.Place.END, Strength.ULTIMATE, 0.6)))
        .with(
            rule(
                Check.NET_SECTION,
                "F/(n·t·(b − d₀)) ≤ f_u/Ω",
                RUPTURE,
                "AISC 360-16, D2(b); from memory",
                new PlateLaw(PlateLaw.Place.SIDES, Strength.ULTIMATE, 1)))
        .with(
            rule(
                Check.WELD,
                "f/a ≤ 0.6·F_EXX/Ω",
                RUPTURE,
                "AISC 360-16, J2.4",
                new WeldLaw(WeldLaw.Metal.ELECTRODE)));
  }

  /** The weld rule that credits the direction of the force. */
  static Rule<WeldDemand> weldByDirection() {
    return rule(
        Check.WELD,
        "f/a ≤ 0.6·F_EXX·(1 + 0.5·sin^1.5 θ)/Ω",
        RUPTURE,
        "AISC 360-16, J2.4(b), Eq. J2-5",
        new WeldLaw(WeldLaw.Metal.ELECTRODE_BY_DIRECTION));
  }
}
