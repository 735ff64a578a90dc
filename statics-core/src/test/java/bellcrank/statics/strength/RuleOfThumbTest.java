package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rules of thumb at the cases that their sources print. */
class RuleOfThumbTest {

  private static final double IN = 0.0254;
  private static final double LBF = 4.4482216152605;
  private static final double KGF = 9.80665;

  /** Source: NAVEDTRA 14251, ch. 6: 5/8 in carries 1.1719 short tons, 2343.8 lb. */
  @Test
  void shackles() {
    assertThat(RuleOfThumb.SHACKLE.load(0.625 * IN) / LBF).isCloseTo(2343.8, within(0.05));
    assertThat(RuleOfThumb.SHACKLE.load(0.625 * IN) / LBF / 2000).isCloseTo(1.1719, within(5e-5));
    // the table allows nearly three times as much
    double table = LineTable.named("shackle 5/8 in (RR-C-271)").workingLoad();
    assertThat(table / RuleOfThumb.SHACKLE.load(0.625 * IN)).isBetween(2.7, 2.8);
  }

  /** Same source, metric rule: 1.59 cm carries 1.05 t; the exact coefficient would be 0.4218. */
  @Test
  void shacklesMetric() {
    double metric = RuleOfThumb.SHACKLE_METRIC.load(0.0159);
    assertThat(metric / KGF / 1000).isCloseTo(1.05, within(0.005));
    double exact = RuleOfThumb.SHACKLE.load(0.0159) / KGF / 1000 / (1.59 * 1.59);
    assertThat(exact).isCloseTo(0.4218, within(5e-5));
    assertThat(metric / RuleOfThumb.SHACKLE.load(0.0159)).isCloseTo(0.989, within(0.0005));
  }

  /** Source: FM 5-125, ch. 3: 3/4 in carries 4.5 short tons. Grade 80 carries far more. */
  @Test
  void openLinkChain() {
    assertThat(RuleOfThumb.OPEN_LINK_CHAIN.load(0.75 * IN) / LBF).isCloseTo(9000, within(1e-6));
    assertThat(LineTable.named("Grade 80 chain 1/2 in").workingLoad())
        .isGreaterThan(2 * RuleOfThumb.OPEN_LINK_CHAIN.load(0.5 * IN));
  }

  /** Source: NAVEDTRA 14043, ch. 4: manila of 3 in girth breaks at 8100, nylon of 2.5 at 15000. */
  @Test
  void ropesByTheirGirth() {
    assertThat(RuleOfThumb.MANILA_BREAKING.load(3 * IN / Math.PI) / LBF)
        .isCloseTo(8100, within(1e-6));
    assertThat(RuleOfThumb.NYLON_BREAKING.load(2.5 * IN / Math.PI) / LBF)
        .isCloseTo(15000, within(1e-6));
  }

  /**
   * Source: coast guard licence study page: manila of 1/2 in, 2218 lb, with π as 3.14; nylon 2.5
   * times as much, 5546 lb, which is below the rule of 2400.
   */
  @Test
  void halfInchManila() {
    double exact = RuleOfThumb.MANILA_BREAKING.load(0.5 * IN) / LBF;
    double rough = exact * Math.pow(3.14 / Math.PI, 2);
    assertThat(rough).isCloseTo(2218, within(0.5));
    assertThat(2.5 * rough).isCloseTo(5546, within(0.5));
    assertThat(RuleOfThumb.NYLON_BREAKING.load(0.5 * IN) / LBF).isGreaterThan(5546);
  }

  /**
   * Source: public rigging sheet: 12 mm carries 1152 kg; 24 mm breaks at 2.88 t, a sixth is 0.5.
   */
  @Test
  void ropesInMillimetres() {
    assertThat(RuleOfThumb.FLEXIBLE_WIRE_ROPE.load(0.012) / KGF).isCloseTo(1152, within(0.5));
    double breaking = RuleOfThumb.FIBRE_ROPE_BREAKING.load(0.024) / KGF / 1000;
    assertThat(breaking).isCloseTo(2.88, within(0.005));
    assertThat(breaking / 6).isCloseTo(0.5, within(0.05));
  }

  @Test
  void eachSaysWhatItTellsAndItsCaution() {
    for (RuleOfThumb rule : RuleOfThumb.values()) {
      assertThat(rule.isBreaking()).isEqualTo(rule.name().endsWith("BREAKING"));
      assertThat(rule.formula()).contains("²");
      assertThat(rule.source()).isNotBlank();
      assertThat(rule.caution()).endsWith(".");
    }
    assertThatThrownBy(() -> RuleOfThumb.SHACKLE.load(16))
        .hasMessage(
            "rule of thumb: diameter is 16.0; wanted: above 0 and below 1 m; in m, not the"
                + " circumference");
  }
}
