package bellcrank.statics.strength;

import static bellcrank.statics.strength.Material.Strength.BENDING;
import static bellcrank.statics.strength.Material.Strength.COMPRESSION_ACROSS;
import static bellcrank.statics.strength.Material.Strength.SHEAR;
import static bellcrank.statics.strength.Material.Strength.ULTIMATE;
import static bellcrank.statics.strength.Material.Strength.YIELD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.Span;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTableTest {

  private static final double MPA = 1e6;
  private static final double KSI = 1000 * 6894.757293168;

  private static double strength(Material material, Material.Strength strength) {
    return material.strength(strength).orElseThrow();
  }

  /** Source: BS EN 10025-2 (2004) Table 7: yield up to 16, 40, 63, 80, 100 mm, tensile range. */
  @ParameterizedTest
  @CsvSource({
    "S235, 235, 225, 215, 215, 215, 360, 510",
    "S275, 275, 265, 255, 245, 235, 410, 560",
    "S355, 355, 345, 335, 325, 315, 470, 630"
  })
  void steelOfTheProductStandard(
      String grade,
      double y16,
      double y40,
      double y63,
      double y80,
      double y100,
      double least,
      double most) {
    MaterialRow row = MaterialTable.named(grade + " (EN 10025-2)");
    List<Double> thickness = List.of(0.016, 0.040, 0.063, 0.080, 0.100);
    List<Double> yield = List.of(y16, y40, y63, y80, y100);
    for (int i = 0; i < thickness.size(); i++) {
      Material material = row.at(thickness.get(i));
      assertThat(strength(material, YIELD)).isEqualTo(yield.get(i) * MPA);
      assertThat(strength(material, ULTIMATE)).isEqualTo(least * MPA);
    }
    assertThat(strength(row.at(0.0161), YIELD)).isEqualTo(y40 * MPA);
    row.steps()
        .forEach(
            step -> assertThat(step.strength(ULTIMATE)).contains(Span.of(least * MPA, most * MPA)));
    assertThat(row.elasticity()).isEqualTo(210e9);
    assertThat(row.basis()).isEqualTo(Basis.PRINTED);
    assertThatThrownBy(() -> row.at(0.101))
        .isInstanceOf(ModelException.class)
        .hasMessage(grade + " (EN 10025-2): thickness is 0.101; wanted: above 0 and at most 0.1 m");
  }

  /** Source: EN 1993-1-1 (2005) with AC2 (2009), Table 3.1; the last of S235 from memory. */
  @ParameterizedTest
  @CsvSource({"S235, 235, 360, 215, 360", "S275, 275, 430, 255, 410", "S355, 355, 490, 335, 470"})
  void steelOfTheDesignStandard(String grade, double y40, double u40, double y80, double u80) {
    MaterialRow row = MaterialTable.named(grade + " (EN 1993-1-1)");
    assertThat(strength(row.at(0.04), YIELD)).isEqualTo(y40 * MPA);
    assertThat(strength(row.at(0.04), ULTIMATE)).isEqualTo(u40 * MPA);
    assertThat(strength(row.at(0.08), YIELD)).isEqualTo(y80 * MPA);
    assertThat(strength(row.at(0.08), ULTIMATE)).isEqualTo(u80 * MPA);
    assertThatThrownBy(() -> row.at(0.09)).hasMessageEndingWith("at most 0.08 m");
  }

  /**
   * Sources: ASTM A36 and A500 with its edition of 2021; Aluminum Structures; 49 CFR 178.46; note
   * to MMPDS-01. Some public copies print 36 300 psi for A36, which is 250 MPa turned back, and
   * 45/40 ksi as least values of 6061-T6, which are typical ones.
   */
  @ParameterizedTest
  @CsvSource({
    "A36 (ASTM), 36, 58",
    "A500 grade C (ASTM 2021), 50, 62",
    "'A500 grade B, square or rectangular (ASTM to 2018)', 46, 58",
    "'A500 grade B, round (ASTM to 2018)', 42, 58",
    "6061-T6 extrusion, 35, 38",
    "6061-T6 sheet, 35, 42",
    "6061-T6 welded zone, 20, 24"
  })
  void americanGrades(String name, double yield, double ultimate) {
    Material material = MaterialTable.named(name).at(0.01);
    assertThat(strength(material, YIELD)).isCloseTo(yield * KSI, within(1.0));
    assertThat(strength(material, ULTIMATE)).isCloseTo(ultimate * KSI, within(1.0));
    assertThat(material.name()).isEqualTo(name);
  }

  @Test
  void a36BeyondEightInchesYieldsSooner() {
    MaterialRow row = MaterialTable.named("A36 (ASTM)");
    assertThat(strength(row.at(0.2032), YIELD)).isCloseTo(36 * KSI, within(1.0));
    assertThat(strength(row.at(0.2033), YIELD)).isCloseTo(32 * KSI, within(1.0));
    assertThat(row.steps().get(0).strength(ULTIMATE).orElseThrow().high())
        .isCloseTo(80 * KSI, within(1.0));
    assertThatThrownBy(() -> row.at(0))
        .hasMessage("A36 (ASTM): thickness is 0.0; wanted: above 0 m");
    assertThatThrownBy(() -> row.at(Double.NaN)).isInstanceOf(ModelException.class);
  }

  @Test
  void weldedAluminiumHasAShearStrengthToo() {
    Material welded = MaterialTable.named("6061-T6 welded zone").at(0.01);
    assertThat(strength(welded, SHEAR)).isCloseTo(15 * KSI, within(1.0));
    assertThat(welded.kind()).isEqualTo(Material.Kind.ALUMINIUM);
    // printed 290 and 260 MPa for sheet and extrusion
    assertThat(strength(MaterialTable.named("6061-T6 sheet").at(0.01), ULTIMATE) / MPA)
        .isCloseTo(290, within(0.5));
    assertThat(strength(MaterialTable.named("6061-T6 extrusion").at(0.01), ULTIMATE) / MPA)
        .as("printed 260 is rounded to two digits")
        .isCloseTo(262, within(0.5));
  }

  @Test
  void timberIsFromMemoryAndSaysSo() {
    MaterialRow row = MaterialTable.named("softwood C24 (EN 338)");
    assertThat(row.basis()).isEqualTo(Basis.FROM_MEMORY);
    assertThat(row.note()).contains("k_mod");
    Material timber = row.at(0.2);
    assertThat(timber.source()).isEqualTo("EN 338 (2009), Table 1 (from memory)");
    assertThat(timber.kind()).isEqualTo(Material.Kind.TIMBER);
    assertThat(strength(timber, BENDING)).isEqualTo(24 * MPA);
    assertThat(strength(timber, COMPRESSION_ACROSS)).isEqualTo(2.5 * MPA);
    assertThat(timber.strength(YIELD)).isEmpty();
    assertThat(timber.density()).hasValue(420);
  }

  @Test
  void supersededRowsAreNotOffered() {
    assertThat(MaterialTable.superseded())
        .extracting(MaterialRow::name)
        .containsExactly(
            "A500 grade C, square or rectangular (ASTM to 2018)",
            "A500 grade C, round (ASTM to 2018)",
            "S355 (EN 1993-1-1, first printing)");
    Material round = MaterialTable.superseded().get(1).at(0.01);
    assertThat(strength(round, YIELD)).isCloseTo(46 * KSI, within(1.0));
    assertThat(strength(MaterialTable.superseded().get(0).at(0.01), YIELD))
        .isCloseTo(50 * KSI, within(1.0));
    assertThat(strength(MaterialTable.superseded().get(2).at(0.01), ULTIMATE)).isEqualTo(510 * MPA);
    for (MaterialRow old : MaterialTable.superseded()) {
      assertThatThrownBy(() -> MaterialTable.named(old.name()))
          .isInstanceOf(ModelException.class)
          .hasMessageStartingWith("material table: row is ");
    }
    assertThat(MaterialTable.rows()).hasSize(16);
  }

  /** Sources: EN 1993-1-1 3.2.6; AISC 360; printed 200 GPa and 77.2 GPa for the latter. */
  @Test
  void moduli() {
    assertThat(MaterialTable.constants())
        .extracting(row -> row.value().low())
        .satisfiesExactly(
            e -> assertThat(e).isEqualTo(210e9),
            g -> assertThat(g).isEqualTo(81e9),
            e -> assertThat(e / 1e9).isCloseTo(200, within(0.5)),
            g -> assertThat(g / 1e9).isCloseTo(77.2, within(0.05)),
            wall -> assertThat(wall).isEqualTo(0.93),
            corner -> assertThat(corner).isEqualTo(3));
    assertThat(MaterialTable.named("A36 (ASTM)").elasticity() / 1e9).isCloseTo(200, within(0.5));
  }

  @Test
  void aRowNeedsAStep() {
    assertThatThrownBy(
            () ->
                new MaterialRow(
                    "oak", Material.Kind.TIMBER, 1e10, 700, List.of(), "own", Basis.PRINTED, ""))
        .hasMessage("oak: steps is none; wanted: strengths for one thickness or more");
  }

  @Test
  void valuesOfOnesOwnCountAsMuch() {
    Material own =
        new Material(
            "old oak",
            Material.Kind.TIMBER,
            1e10,
            OptionalDouble.empty(),
            Map.of(BENDING, 20 * MPA),
            "own test pieces");
    assertThat(own.strength(BENDING)).contains(20 * MPA);
    assertThat(BENDING.words()).isEqualTo("bending strength");
    assertThatThrownBy(
            () ->
                new Material(
                    "old oak", Material.Kind.TIMBER, 1e10, OptionalDouble.of(-1), Map.of(), "own"))
        .hasMessage("old oak: density is -1.0; wanted: a number above 0");
    assertThat(new MaterialStep(Optional.empty(), Map.of()).holdsFor(5)).isTrue();
  }
}
