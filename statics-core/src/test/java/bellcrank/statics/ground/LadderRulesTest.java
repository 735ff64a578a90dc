package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import org.junit.jupiter.api.Test;

class LadderRulesTest {

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  /** Source: 29 CFR 1926.1053(b)(5)(i), a quarter of the working length; 75.5° as printed. */
  @Test
  void theFootStandsAQuarterOfTheLengthOut() {
    assertThat(LadderRules.named("foot distance per working length").value())
        .isEqualTo(Span.of(0.25));
    assertThat(Math.toDegrees(LadderRules.leaningAngle())).isCloseTo(75.5, Si.printed(1));
    assertThat(LadderRules.footDistance(4)).isEqualTo(1);
    CitedValue test = LadderRules.named("angle of the load test");
    assertThat(test.dimension()).isEqualTo(Dimension.ANGLE);
    assertThat(test.value().low()).isCloseTo(Math.toRadians(75.5), within(1e-12));
  }

  /**
   * A public copy of an army course (EN0562) prints three set-up figures for a ladder of 28 ft that
   * disagree: a quarter of the length, an angle of about 70°, and the foot 72 in out. A quarter is
   * 84 in at 75.5°; 72 in is 77.6°; 70° needs 115 in. The quarter is the rule.
   */
  @Test
  void aCourseThatDisagreesWithItselfIsNotFollowed() {
    double length = 28 * FOOT;
    double checkedFoot = 84 * INCH;
    assertThat(LadderRules.footDistance(length)).isCloseTo(checkedFoot, within(1e-12));
    double printedFoot = 72 * INCH;
    assertThat(Math.toDegrees(Math.acos(printedFoot / length))).isCloseTo(77.6, Si.printed(1));
    double printedAngle = Math.toRadians(70);
    assertThat(Math.cos(printedAngle) * length / INCH).isCloseTo(115, Si.printed(0));
  }

  /** Source: 29 CFR 1926.1053(a)(1)(i). */
  @Test
  void strengthIsAMultipleOfTheIntendedLoad() {
    assertThat(LadderRules.named("strength of a portable ladder per intended load").value())
        .isEqualTo(Span.of(4));
    assertThat(LadderRules.named("strength of a type 1A portable ladder per intended load").value())
        .isEqualTo(Span.of(3.3));
  }

  /** Source: 29 CFR 1926.1053(a)(1)(iii). It prints 250 lb as 114 kg; 250 lb are 113.4 kg. */
  @Test
  void theLoadOnAFixedLadderIsThatInPounds() {
    CitedValue load = LadderRules.named("concentrated load on a fixed ladder");
    assertThat(load.dimension()).isEqualTo(Dimension.FORCE);
    double mass = load.value().low() / 9.80665;
    double printed = 114;
    double checked = 113.4;
    assertThat(mass).isCloseTo(checked, Si.printed(1)).isNotCloseTo(printed, Si.printed(0));
  }

  /**
   * The rule once stood for general industry too (1910.25 and 1910.26); from memory, the rewrite in
   * force from 2017 dropped it. So the paragraph for construction is the one cited.
   */
  @Test
  void everyRuleCitesTheConstructionStandard() {
    assertThat(LadderRules.rows())
        .hasSize(5)
        .allSatisfy(
            row -> {
              assertThat(row.source()).startsWith("29 CFR 1926.1053");
              assertThat(row.basis()).isEqualTo(Basis.PRINTED);
              assertThat(row.note()).isNotEmpty();
              assertThat(LadderRules.named(row.name())).isSameAs(row);
            });
  }

  @Test
  void aMistypedRuleIsAnsweredWithTheNearestOne() {
    assertThatThrownBy(() -> LadderRules.named("angle of load test"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("wanted: \"angle of the load test\" or one of the 4 other rows");
  }
}
