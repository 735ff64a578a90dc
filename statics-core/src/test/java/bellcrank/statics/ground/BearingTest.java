package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand values; the formulas are those of EN 1997-1:2004 Annex D. */
class BearingTest {

  private static final double THIRTY = Math.toRadians(30);

  private static BaseLoad load(double normal, double tangential, double couple) {
    return new BaseLoad(normal, tangential, couple, 1, 2);
  }

  @Test
  void aPresumedPressureActsOnTheEffectiveArea() {
    Presumptive ground = new Presumptive(100e3, "soil report");
    // by hand: e = 20/100 = 0.2, B' = 1 − 0.4 = 0.6, 100 kPa · 0.6 · 2
    BaseLoad load = load(100e3, 30e3, 20e3);
    assertThat(ground.resistance(load)).isCloseTo(120e3, within(1e-6));
    assertThat(ground.utilisation(load).getAsDouble()).isCloseTo(100.0 / 120, within(1e-12));
  }

  @Test
  void aPresumedPressureMayBeRaisedForAReason() {
    // IBC 2006 Table 1804.2 footnote d: one third more, printed as 1.333
    Presumptive sand = SoilTable.named("IBC 2012: sandy gravel and gravel").presumptive();
    Presumptive windy = sand.times(4.0 / 3, "IBC 2006, Table 1804.2, footnote d");
    assertThat(windy.pressure() / sand.pressure()).isCloseTo(1.333, Si.printed(3));
    assertThat(windy.pressure()).isCloseTo(Si.pressure("4000 psf"), within(1e-9));
    assertThat(windy.source())
        .startsWith(sand.source())
        .contains("; times 1.33")
        .endsWith(": IBC 2006, Table 1804.2, footnote d");
  }

  @Test
  void sandUnderAnEccentricSill() {
    // by hand, B' = 1.2 − 2 · 0.1 = 1, L' = 2, A' = 2, H = 0:
    // overburden 9 · 18.401 · (1 + 0.5 · 0.5) = 207.01 kPa
    // weight ½ · 18 · 1 · 20.093 · (1 − 0.15) = 153.71 kPa; times A': 721.45 kN
    Drained sand = new Drained(THIRTY, 0, 18e3, 9e3);
    BaseLoad load = new BaseLoad(200e3, 0, 20e3, 1.2, 2);
    assertThat(sand.resistance(load)).isCloseTo(721.45e3, within(5.0));
    assertThat(sand.utilisation(load).getAsDouble()).isCloseTo(0.27722, within(5e-6));
  }

  @Test
  void theWeightOfTheGroundCountsWithTheShorterSide() {
    // by hand: ½ · 18 · 0.5 · 20.0931 · (1 − 0.3 · 0.5) = 76.856 kPa, times 0.5 m²
    Drained sand = new Drained(THIRTY, 0, 18e3, 0);
    assertThat(sand.resistance(new BaseLoad(10e3, 0, 0, 0.5, 1))).isCloseTo(38428, within(0.5));
    assertThat(sand.resistance(new BaseLoad(10e3, 0, 0, 1, 0.5))).isCloseTo(38428, within(0.5));
  }

  @Test
  void cohesiveGroundUnderAnInclinedLoad() {
    // by hand, B' = 1, L' = 2, m = 2.5/1.5; 1 − 20/(100 + 2 · 5 · 1.7321) = 0.829527
    // i_q = 0.73235, i_γ = 0.60750, i_c = 0.73235 − 0.26765/17.4011 = 0.71697
    // s_q = 1.25, s_γ = 0.85, s_c = (1.25 · 18.4011 − 1)/17.4011 = 1.26437
    // 5 · 30.1396 · s_c · i_c = 136.61, 9 · 18.4011 · s_q · i_q = 151.61,
    // ½ · 18 · 1 · 20.0931 · s_γ · i_γ = 93.38; sum 381.60 kPa, times 2 m²
    Drained ground = new Drained(THIRTY, 5e3, 18e3, 9e3);
    assertThat(ground.resistance(load(100e3, 20e3, 0))).isCloseTo(763.19e3, within(5.0));
    assertThat(ground.resistance(load(100e3, -20e3, 0))).isCloseTo(763.19e3, within(5.0));
  }

  @Test
  void whereTheWidthIsTheLongerSideTheSidesChangePlaces() {
    // by hand, as above but 2 m in the plane and 1 m long: the same shape factors,
    // m = m_L = (2 + 2)/(1 + 2); i_q = 0.77942, i_γ = 0.64655, i_c = 0.76675
    // 146.09 + 161.35 + 99.38 = 406.83 kPa, times 2 m²
    Drained ground = new Drained(THIRTY, 5e3, 18e3, 9e3);
    BaseLoad load = new BaseLoad(100e3, 20e3, 0, 2, 1);
    assertThat(ground.resistance(load)).isCloseTo(813.66e3, within(5.0));
  }

  @Test
  void wetClayUnderACentralLoad() {
    // by hand: s_c = 1.1, 2 m² · (5.14159 · 40 · 1.1 + 9) = 470.46 kN
    Undrained clay = new Undrained(40e3, 9e3);
    assertThat(clay.resistance(load(100e3, 0, 0))).isCloseTo(470.46e3, within(5.0));
  }

  @Test
  void wetClayUnderAnInclinedLoad() {
    // by hand: A' c_u = 80 kN, H = 60: i_c = ½(1 + √0.25) = 0.75,
    // 2 · (5.14159 · 40 · 1.1 · 0.75 + 9) = 357.345 kN
    Undrained clay = new Undrained(40e3, 9e3);
    assertThat(clay.resistance(load(100e3, -60e3, 0))).isCloseTo(357.345e3, within(5.0));
    // at H = A' c_u half the factor is left: 2 · (5.14159 · 22 + 9) = 244.23 kN
    assertThat(clay.resistance(load(100e3, 80e3, 0))).isCloseTo(244.23e3, within(5.0));
    assertThat(clay.resistance(load(100e3, 80.001e3, 0))).isZero();
  }

  @Test
  void aSquareOnWetClayHasTheShapeFactorOfTheAnnex() {
    BaseLoad square = new BaseLoad(1, 0, 0, 1, 1);
    assertThat(new Undrained(1, 0).resistance(square))
        .isCloseTo(1.2 * (Math.PI + 2), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0", "0, 5, 0"})
  void nothingPressedUsesNothing(double normal, double tangential, double couple) {
    for (Bearing ground : Grounds.ALL) {
      assertThat(ground.resistance(load(normal, tangential, couple))).isZero();
      assertThat(ground.utilisation(load(normal, tangential, couple))).hasValue(0);
    }
  }

  @ParameterizedTest
  @CsvSource({"10, 0, 5", "10, 0, -6", "0, 0, 1"})
  void overTheEdgeThereIsNoResistance(double normal, double tangential, double couple) {
    for (Bearing ground : Grounds.ALL) {
      assertThat(ground.resistance(load(normal, tangential, couple))).isZero();
      assertThat(ground.utilisation(load(normal, tangential, couple))).isEmpty();
    }
  }

  @Test
  void aForceThatTheGroundCannotTakeLeavesNoResistance() {
    Drained sand = new Drained(THIRTY, 0, 18e3, 9e3);
    assertThat(sand.resistance(load(100, 99.9, 0))).isPositive();
    assertThat(sand.resistance(load(100, 100, 0))).isZero();
    assertThat(sand.resistance(load(100, -200, 0))).isZero();
    assertThat(sand.utilisation(load(100, 200, 0))).isEmpty();
  }

  @Test
  void theCohesionTermNeverPulls() {
    // at 2°: N_q − 1 = 0.197, so i_c falls below 0 long before i_q does
    Drained soft = new Drained(Math.toRadians(2), 1e3, 0, 0);
    assertThat(soft.resistance(load(100e3, 1e6, 0))).isZero();
    assertThat(soft.resistance(load(100e3, 40e3, 0))).isZero();
    assertThat(soft.resistance(load(1e3, 0.1e3, 0))).isPositive();
  }

  @Test
  void withHardlyAnyFrictionDrainedGroundNearsItsLimit() {
    // by hand for φ → 0: s_c → 1 + (B'/L')/(π + 2), i_c → 1 − mH/(A' c (π + 2))
    // 2 · 10 · (π + 2) · (1 + 0.5/(π + 2)) · (1 − (5/3) · 3/(20 (π + 2))) + 2 · 4
    double factor = Math.PI + 2;
    double expected = 20e3 * factor * (1 + 0.5 / factor) * (1 - 5.0 / (20 * factor)) + 8e3;
    for (double angle : new double[] {1e-9, 1e-100, 1e-300}) {
      Drained ground = new Drained(angle, 10e3, 18e3, 4e3);
      assertThat(ground.resistance(load(50e3, 3e3, 0)))
          .isCloseTo(expected, within(1e-7 * expected));
    }
  }

  @Test
  void everyRuleSaysWhereItComesFrom() {
    assertThat(new Presumptive(1, "soil report").source()).isEqualTo("soil report");
    assertThat(new Drained(0.5, 0, 0, 0).source()).isEqualTo("EN 1997-1:2004, Annex D.4");
    assertThat(new Undrained(1, 0).source()).isEqualTo("EN 1997-1:2004, Annex D.3");
  }
}
