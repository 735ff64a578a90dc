package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.ground.Basis;
import org.junit.jupiter.api.Test;

/** Figures for welds against the examples of their sources, worked in the units of these. */
class WeldTableTest {

  private static final double IN = 0.0254;
  private static final double KIP = 4448.2216152605;

  private static double value(String name) {
    return WeldTable.named(name).value().low();
  }

  private static final double METAL =
      value("shear strength of weld metal per tensile strength")
          * value("E70 electrode, tensile strength");

  /** Source: AISC 360 J2.2a and EN 1993-1-8 4.5.2. */
  @Test
  void throatOfAFillet() {
    assertThat(WeldTable.throat(0.01)).isCloseTo(0.00707, within(5e-6));
    assertThat(value("throat per leg")).isCloseTo(WeldTable.throat(0.5) / 0.5, within(5e-4));
  }

  /** Source: AISC Design Examples V14.0, J.1: 3/16 in, E70: 5.57 kip/in, 47.9 in for 200 kip. */
  @Test
  void lengthwiseShear() {
    double perInch = METAL * WeldTable.throat(0.1875 * IN) * IN;
    assertThat(perInch / KIP).isCloseTo(5.57, within(0.005));
    double phi = value("resistance factor of fillet welds (AISC)");
    assertThat(200 * KIP / (phi * perInch)).isCloseTo(47.9, within(0.05));
  }

  /** Source: AISC Manual, Part 8, from memory: per sixteenth of leg. */
  @Test
  void perSixteenth() {
    double perInch = METAL * WeldTable.throat(IN / 16) * IN / KIP;
    double kipPerInch = KIP / IN;
    assertThat(0.75 * perInch).isCloseTo(1.392, within(5e-4));
    assertThat(value("E70 fillet weld per 1/16 in of leg, with load factors") / kipPerInch)
        .isCloseTo(1.392, within(1e-9));
    assertThat(perInch / 2).isCloseTo(0.928, within(5e-4));
    assertThat(value("E70 fillet weld per 1/16 in of leg, allowable") / kipPerInch)
        .isCloseTo(0.928, within(1e-9));
    assertThat(WeldTable.named("E70 fillet weld per 1/16 in of leg, allowable").basis())
        .isEqualTo(Basis.FROM_MEMORY);
  }

  /**
   * Source: university notes on welds, Example 1: 3/4 in E70, 8 in long, throat 0.707: along
   * 133.62, across 200.4 kip. At 45 degrees it prints 172.7 kip by a factor of 1.292456; the factor
   * is 1.2973 and the strength 173.3 kip.
   */
  @Test
  void direction() {
    double along = 0.75 * METAL * value("throat per leg") * 0.75 * IN * 8 * IN / KIP;
    assertThat(along).isCloseTo(133.62, within(0.005));
    assertThat(along * WeldTable.directionalFactor(Math.PI / 2)).isCloseTo(200.4, within(0.05));
    double at45 = WeldTable.directionalFactor(Math.PI / 4);
    assertThat(at45).isCloseTo(1.2973, within(5e-5));
    assertThat(Math.abs(at45 - 1.292456)).isGreaterThan(0.004);
    assertThat(along * at45).isCloseTo(173.3, within(0.05));
    assertThat(WeldTable.directionalFactor(0)).isEqualTo(1);
  }

  /**
   * Source: CSA S16-14 13.13.2.2, example in a steel institute's note: 8 mm, 490 MPa: two
   * lengthwise seams of 100 mm give 111 kN each, one of 120 mm at 60 degrees 209 kN. The sum is
   * printed as 431 from rounded terms; unrounded it is 432.
   */
  @Test
  void severalDirections() {
    double phi = value("resistance factor of fillet welds (CSA S16)");
    double perArea = 0.67 * phi * 490e6;
    double reduced = value("share of a lengthwise seam beside one at 60 degrees (CSA S16)");
    double lengthwise = perArea * WeldTable.throat(0.008) * 0.1 * reduced / 1000;
    double slanted =
        perArea * WeldTable.throat(0.008) * 0.12 * WeldTable.directionalFactor(Math.PI / 3) / 1000;
    assertThat(lengthwise).isCloseTo(111, within(0.5));
    assertThat(slanted).isCloseTo(209, within(0.5));
    assertThat(2 * Math.round(lengthwise) + Math.round(slanted)).isEqualTo(431);
    assertThat(2 * lengthwise + slanted).isCloseTo(432, within(0.5));
  }

  /** Source: EN 1993-1-8 (2005), Table 4.1, from memory. */
  @Test
  void correlationFactors() {
    assertThat(value("correlation factor S235")).isEqualTo(0.8);
    assertThat(value("correlation factor S275")).isEqualTo(0.85);
    assertThat(value("correlation factor S355")).isEqualTo(0.9);
    assertThat(value("partial factor of welds (EN 1993-1-8)")).isEqualTo(1.25);
    assertThat(WeldTable.rows()).hasSize(12);
  }

  @Test
  void mistakes() {
    assertThatThrownBy(() -> WeldTable.throat(5))
        .hasMessage("weld: leg is 5.0; wanted: above 0 and below 1 m; in m");
    assertThatThrownBy(() -> WeldTable.directionalFactor(45))
        .hasMessage("weld: angle is 45.0; wanted: an angle in rad from 0 to π/2");
    assertThatThrownBy(() -> WeldTable.named("correlation factor S420"))
        .hasMessageContaining("correlation factor S2");
    assertThatThrownBy(() -> StressTable.named("imperfection of curve c"))
        .hasMessageStartingWith("stress table: row is \"imperfection of curve c\"");
  }
}
