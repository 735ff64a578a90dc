package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StressTableTest {

  /**
   * Sources: AISC 360-16 J7 (from memory); EN 1993-1-8 (2005) Table 3.10, where one public page
   * calls the ultimate strength of the pin its yield strength; EN 1993-1-1 (2005) Table 6.1; IS 800
   * as recalled in a public exam answer.
   */
  @ParameterizedTest
  @CsvSource({
    "pin bearing coefficient (AISC), 1.8",
    "pin bearing resistance factor (AISC), 0.75",
    "pin bearing safety factor (AISC), 2",
    "pin shear coefficient (EN 1993-1-8), 0.6",
    "pin bearing coefficient (EN 1993-1-8), 1.5",
    "pin bearing coefficient in use (EN 1993-1-8), 0.6",
    "pin bending coefficient (EN 1993-1-8), 1.5",
    "pin bending coefficient in use (EN 1993-1-8), 0.8",
    "pin contact coefficient (EN 1993-1-8), 0.591",
    "pin contact limit (EN 1993-1-8), 2.5",
    "imperfection of buckling curve a0, 0.13",
    "imperfection of buckling curve a, 0.21",
    "imperfection of buckling curve b, 0.34",
    "imperfection of buckling curve c, 0.49",
    "imperfection of buckling curve d, 0.76",
    "effective length: both ends fixed (IS 800), 0.65",
    "'effective length: one end fixed, one hinged (IS 800)', 0.80",
    "'effective length: one end fixed, one may shift (IS 800)', 1.2",
    "effective length: both ends hinged (IS 800), 1.0",
    "'effective length: one end fixed, one partly held and may shift (IS 800)', 1.5",
    "'effective length: one end fixed, one free (IS 800)', 2.0",
    "'effective length: one end hinged, one may shift (IS 800)', 2.0"
  })
  void coefficients(String name, double value) {
    assertThat(StressTable.named(name).value().low()).isEqualTo(value);
    assertThat(StressTable.rows()).hasSize(22);
  }

  /** Source: BS 5950-1 in a pocket book, withdrawn. */
  @Test
  void supersededEffectiveLengths() {
    assertThat(StressTable.superseded())
        .extracting(row -> row.value().low())
        .containsExactly(0.7, 0.85, 1.0, 1.5, 2.0);
    assertThat(StressTable.superseded())
        .allSatisfy(row -> assertThat(row.note()).startsWith("Superseded"));
  }

  /**
   * Sources: EN 1993-1-1 (2005) 6.3.1.3: λ₁ = π·√(E/f_y) = 93.9 for 235 MPa; AISC 360 E3:
   * 4.71·√(E/F_y) = 113.43 for 50 ksi. Each needs the modulus of its own standard.
   */
  @Test
  void slendernessByTheModulusOfItsStandard() {
    Material european = MaterialTable.named("S235 (EN 1993-1-1)").at(0.01);
    Material american = MaterialTable.named("A500 grade C (ASTM 2021)").at(0.01);
    assertThat(Math.PI * Math.sqrt(yields(european))).isCloseTo(93.9, within(0.05));
    assertThat(4.71 * Math.sqrt(yields(american))).isCloseTo(113.43, within(0.005));
  }

  /** Modulus over yield strength. */
  private static double yields(Material material) {
    return material.elasticity() / material.strength(Material.Strength.YIELD).orElseThrow();
  }
}
