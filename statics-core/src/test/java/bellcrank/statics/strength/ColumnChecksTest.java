package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.SOFTWOOD;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.prop;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.ColumnEnds.Curve;
import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.UnitSystem;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Columns against hand values, by the formulas of the rules' sources. */
class ColumnChecksTest {

  private static final Section SQUARE = Profiles.rectangle(40 * MM, 40 * MM).section();

  private static Checks checks(Method method, Section section, Material material, ColumnEnds ends) {
    return Checks.of(
        Balance.of(prop(10 * KN).build()),
        Sizing.of(method).with("prop", section, material).with(ends));
  }

  private static double limit(Checks checks, String part, String what) {
    Checked one = checked(checks, part, what);
    return one.resistance() * one.factor().value();
  }

  /**
   * 40 × 40 mm, 1.5 m: i = 40/√12 = 11.547 mm, λ = 129.90 < 4.71·√(E/f_y) = 140.8, F_e = π²E/λ² =
   * 122.82 MPa, F_cr = 0.658^(235/122.82)·235 = 105.50 MPa, N_b = 168.81 kN. AISC 360-16, E3.
   */
  @Test
  void theAmericanCurveOfStockyColumns() {
    Checks checks = checks(Method.ALLOWABLE, SQUARE, STEEL, ColumnEnds.pinned("prop"));

    Checked column = checked(checks, "prop", "column");
    assertThat(column.demand()).isCloseTo(10 * KN, within(1e-6));
    assertThat(column.resistance()).isCloseTo(168.8075 * KN / 1.67, within(1.0));
    assertThat(column.working(UnitSystem.SI))
        .isEqualTo(
            "N = 10000 N against 105.5 MPa × 1600 mm²/1.67 = 101100 N; effective length 1.500 m in"
                + " the plane, pinned at both ends, slenderness 129.9");
    assertThat(checked(checks, "prop", "axial stress").demand())
        .isCloseTo(6.25 * MPA, within(1e-3));
  }

  /** Held as a flagpole, k = 2: λ = 259.8, F_e = 30.705 MPa, 0.877·F_e·A = 43.086 kN. */
  @Test
  void theAmericanCurveOfSlenderColumns() {
    ColumnEnds flagpole =
        new ColumnEnds(
            "prop", Optional.empty(), Optional.empty(), 2, 1, Curve.C, "free at the head");
    Checks checks = checks(Method.ALLOWABLE, SQUARE, STEEL, flagpole);

    assertThat(limit(checks, "prop", "column")).isCloseTo(43.0859 * KN, within(1.0));
    assertThat(checked(checks, "prop", "column").working(UnitSystem.SI))
        .endsWith("effective length 3.000 m in the plane, free at the head, slenderness 259.8");
  }

  /**
   * λ̄ = 129.90/93.913 = 1.38324, curve c: Φ = 0.5·(1 + 0.49·1.18324 + 1.91334) = 1.74656, χ = 1/(Φ
   * + √(Φ² − λ̄²)) = 0.35550, N_b = 133.67 kN. EN 1993-1-1:2005, 6.3.1.
   */
  @Test
  void theEuropeanCurve() {
    Checks checks = checks(Method.RESISTANCE, SQUARE, STEEL, ColumnEnds.pinned("prop"));

    assertThat(limit(checks, "prop", "column")).isCloseTo(133.6683 * KN, within(1.0));
    assertThat(checked(checks, "prop", "column").utilisation())
        .isCloseTo(10 / 133.6683, within(1e-6));
  }

  /** π²·210000·213333/1500² = 196.51 kN, over 23/12 or over 1. */
  @Test
  void eulersLoad() {
    for (Method method : Method.values()) {
      Checks checks = checks(method, SQUARE, STEEL, ColumnEnds.pinned("prop"));
      assertThat(limit(checks, "prop", "column by Euler")).isCloseTo(196.5148 * KN, within(1.0));
    }
    assertThat(
            checked(
                    checks(Method.ALLOWABLE, SQUARE, STEEL, ColumnEnds.pinned("prop")),
                    "prop",
                    "column by Euler")
                .factor()
                .value())
        .isCloseTo(1.9167, within(1e-4));
  }

  /**
   * Timber 100 × 100 mm, effective length 2.5 m: λ = 86.603, λ_rel = λ/π·√(21/(0.67·11000)) =
   * 1.47149, k = 0.5·(1 + 0.2·1.17149 + 2.16528) = 1.69979, k_c = 0.39205, N = 82.33 kN. EN
   * 1995-1-1, 6.3.2, from memory.
   */
  @Test
  void timberHasACurveOfItsOwn() {
    Section post = Profiles.rectangle(100 * MM, 100 * MM).section();
    ColumnEnds ends =
        new ColumnEnds(
            "prop", Optional.empty(), Optional.empty(), 2.5 / 1.5, 1, Curve.C, "as measured");
    for (Method method : Method.values()) {
      Checks checks = checks(method, post, SOFTWOOD, ends);
      assertThat(limit(checks, "prop", "column")).isCloseTo(82.3314 * KN, within(1.0));
    }
  }

  /** A short column does not buckle: λ = 17.3 is below 0.2·93.9 and below 0.3 for timber. */
  @Test
  void stockyColumnsKeepTheirStrength() {
    ColumnEnds held =
        new ColumnEnds("prop", Optional.empty(), Optional.empty(), 0.1, 0.1, Curve.B, "held");

    assertThat(limit(checks(Method.RESISTANCE, SQUARE, STEEL, held), "prop", "column"))
        .isCloseTo(235 * MPA * 1600e-6, within(1e-3));
    assertThat(limit(checks(Method.RESISTANCE, SQUARE, SOFTWOOD, held), "prop", "column"))
        .isCloseTo(21 * MPA * 1600e-6, within(1e-3));
  }

  /** A plank 20 mm wide and 40 mm high buckles sideways: λ = 1500/(20/√12) = 259.8. */
  @Test
  void theSlenderDirectionDecides() {
    Checks checks = checks(Method.ALLOWABLE, BAR, STEEL, ColumnEnds.pinned("prop"));

    assertThat(checked(checks, "prop", "column").working(UnitSystem.SI))
        .endsWith(
            "effective length 1.500 m out of the plane, pinned at both ends, slenderness 259.8");
  }

  /**
   * An equal angle with sharp corners, 60 × 60 × 6 mm. About its weak axis I = (I_x − |I_xy|), here
   * from the section; i is 0.4 of the leg's 1/2 or so, less than about either leg.
   */
  @Test
  void anglesBuckleAboutTheirWeakAxis() {
    Section angle = Profiles.angle(60 * MM, 60 * MM, 6 * MM).section();
    double weak = angle.inertia() - Math.abs(angle.productOfInertia());
    double euler = Math.PI * Math.PI * 210e9 * weak / (1.5 * 1.5);
    Checks checks = checks(Method.ALLOWABLE, angle, STEEL, ColumnEnds.pinned("prop"));

    assertThat(weak).isLessThan(0.5 * angle.inertia());
    assertThat(limit(checks, "prop", "column by Euler")).isCloseTo(euler, within(1e-9 * euler));
    assertThat(checked(checks, "prop", "column").working(UnitSystem.SI))
        .contains(" about the weak axis, pinned at both ends");
  }

  /** A beam of 1 m pressed by 10 kN, with 300 N in its middle: M = 75 N·m. */
  private static Device pressedBeam() {
    return Device.named("pressed beam")
        .point("a", 0, 0)
        .point("m", 0.5, 0)
        .point("b", 1, 0)
        .member("beam", "a", "m", "b")
        .pin("left", "a", "beam", "ground")
        .roller("right", "b", "beam", "ground", Direction.UP)
        .force("press", "beam", "b", Vector.of(-10 * KN, 0))
        .force("cask", "beam", "m", Vector.of(0, -300))
        .build();
  }

  /**
   * N_cr in the plane = π²·210000·106667/1000² = 221.08 kN, k = 1/(1 − 10/221.08) = 1.04738, M_el =
   * 235·5333.3 = 1253.3 N·m. N_b is that of the slender side, λ = 173.2: 0.877·69.087·800 = 48.472
   * kN by AISC, χ = 0.22516 and 42.330 kN by curve c. Sums: 0.20630 + 0.06268 = 0.26898 and 0.23624
   * + 0.06268 = 0.29892.
   */
  @Test
  void columnsThatBendAsWell() {
    String what = "column with bending from a to b";
    for (Method method : Method.values()) {
      Checks checks =
          Checks.of(
              Balance.of(pressedBeam()),
              Sizing.of(method).with("beam", BAR, STEEL).with(ColumnEnds.pinned("beam", "a", "b")));
      double sum = method == Method.ALLOWABLE ? 0.268982 : 0.298917;
      assertThat(checked(checks, "beam", what).demand()).isCloseTo(sum, within(1e-6));
      assertThat(checked(checks, "beam", what).resistance())
          .isEqualTo(method == Method.ALLOWABLE ? 1 / 1.67 : 1);
      assertThat(limit(checks, "beam", "column from a to b"))
          .isCloseTo(method == Method.ALLOWABLE ? 48471.6 : 42329.6, within(0.1));
    }
  }

  /** The half near b is thinner: it decides for the whole way. */
  @Test
  void theWeakestBarCountsForTheWholeWay() {
    Sizing even =
        Sizing.of(Method.RESISTANCE)
            .with("beam", BAR, STEEL)
            .with(ColumnEnds.pinned("beam", "a", "b"));
    Section thin = Profiles.rectangle(15 * MM, 40 * MM).section();
    Sizing uneven = even.with("beam", new Bar("m", "b"), thin, STEEL);
    Checks some = Checks.of(Balance.of(pressedBeam()), uneven);
    Checks all = Checks.of(Balance.of(pressedBeam()), even.with("beam", thin, STEEL));

    assertThat(limit(some, "beam", "column from a to b"))
        .isEqualTo(limit(all, "beam", "column from a to b"));
    assertThat(checked(some, "beam", "stress at the top face of a–m").utilisation())
        .isLessThan(checked(some, "beam", "stress at the top face of m–b").utilisation());
  }

  @Test
  void whatIsPulledDoesNotBuckle() {
    Checks checks =
        Checks.of(
            Balance.of(prop(-10 * KN).build()),
            Sizing.of(Method.ALLOWABLE)
                .with("prop", SQUARE, STEEL)
                .with(ColumnEnds.pinned("prop")));

    assertThat(checked(checks, "prop", "column").demand()).isZero();
    assertThat(checked(checks, "prop", "axial stress").demand())
        .isCloseTo(6.25 * MPA, within(1e-3));
  }

  @Test
  void whatIsMissingIsTold() {
    Material alloy =
        new Material(
            "alloy",
            Kind.ALUMINIUM,
            70e9,
            OptionalDouble.empty(),
            Map.of(Strength.YIELD, 200 * MPA),
            "ours");
    Checks checks = checks(Method.ALLOWABLE, SQUARE, alloy, ColumnEnds.pinned("prop"));
    assertThat(whyNot(checks, "prop", "column"))
        .isEqualTo("no column curve for alloy is among the rules");
    assertThat(checked(checks, "prop", "column by Euler").demand()).isPositive();

    Material bare = Tried.steel("scrap steel", Map.of());
    assertThat(
            whyNot(
                checks(Method.RESISTANCE, SQUARE, bare, ColumnEnds.pinned("prop")),
                "prop",
                "column"))
        .isEqualTo("no yield strength of scrap steel is stated");

    Checks unsized =
        Checks.of(
            Balance.of(pressedBeam()),
            Sizing.of(Method.ALLOWABLE).with(ColumnEnds.pinned("beam", "a", "b")));
    assertThat(whyNot(unsized, "beam", "column from a to b"))
        .isEqualTo("no section and material are stated");
    Checks strut =
        Checks.of(
            Balance.of(prop(1).build()),
            Sizing.of(Method.ALLOWABLE).with(ColumnEnds.pinned("prop")));
    assertThat(whyNot(strut, "prop", "column")).isEqualTo("no section and material are stated");
    assertThat(whyNot(strut, "prop", "axial stress"))
        .isEqualTo("no section and material are stated");
  }
}
