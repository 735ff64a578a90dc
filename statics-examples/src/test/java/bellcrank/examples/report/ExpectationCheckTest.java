package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Answer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ExpectationCheckTest {

  /** A lever of 2 m with 1000 N at its end and a couple to hold it: 2000 N·m. */
  private static final String LEVER =
      """
      format: 1
      device: lever
      units: {length: UNIT}
      points: {a: [0 m, 0 m], b: [2 m, 0 m]}
      members: {lever: [a, b]}
      connections: {hinge: {pin: a, joins: [lever, ground]}}
      loads: {basket: {force: 1000 N, direction: down, member: lever, at: b}}
      seek: {hand: {want: couple, member: lever}}
      cases: {full: {factors: {basket: 1}}, half: {factors: {basket: 0.5}}}
      expect: {ASK: {value: VALUE, digits: DIGITS}}
      """;

  private static Checked check(String ask, String value, int digits) {
    return check(ask, value, digits, "m");
  }

  private static Checked check(String ask, String value, int digits, String unit) {
    return all(LEVER
            .replace("UNIT", unit)
            .replace("ASK", '"' + ask + '"')
            .replace("VALUE", value)
            .replace("DIGITS", Integer.toString(digits)))
        .get(0);
  }

  private static List<Checked> all(String text) {
    DeviceFile file = YamlFiles.parse(text);
    return ExpectationCheck.all(file);
  }

  @ParameterizedTest
  @CsvSource({
    "1000 N, 4, true",
    "1000.5 N, 5, false",
    "1000.05 N, 6, false",
    "1000.05 N, 5, true",
    "999.5 N, 4, false",
    "999.95 N, 4, true",
    "1005 N, 3, true",
    "1005.1 N, 3, false",
    "1050 N, 2, true",
    "1051 N, 2, false",
    "-1000 N, 4, false",
    "1 kN, 15, true"
  })
  void aValueHoldsToHalfAUnitOfItsLastDigit(String value, int digits, boolean holds) {
    assertThat(check("hinge.y", value, digits).holds()).isEqualTo(holds);
  }

  @Test
  void theBoundIsIncludedInSpiteOfRounding() {
    // 500.05 N to 4 digits allows 0.05 N, and 500.05 − 500 is a little more in binary
    Checked checked = check("hinge.y in half", "500.05 N", 4);
    assertThat(checked.allowed()).isEqualTo(0.05);
    assertThat(500.05 - 500).isGreaterThan(0.05);
    assertThat(checked.holds()).isTrue();
  }

  @Test
  void digitsCountInTheUnitInWhichTheValueIsWritten() {
    // 1.3 m = 51.181 in: half a unit of the third digit is 0.05 in
    String lever = LEVER.replace("b: [2 m", "b: [1.3 m").replace("UNIT", "m");
    String expected = lever.replace("ASK", "resultant.arm about a").replace("DIGITS", "3");
    Checked inches = all(expected.replace("VALUE", "-51.2 in")).get(0);
    assertThat(inches.allowed()).isCloseTo(0.05 * 0.0254, within(1e-12));
    assertThat(inches.holds()).isTrue();
    assertThat(all(expected.replace("VALUE", "-51.3 in")).get(0).holds()).isFalse();
    Checked sum = all(expected.replace("VALUE", "-4 ft 3.2 in")).get(0);
    assertThat(sum.allowed()).isEqualTo(inches.allowed());
    // 51.3 in are 1.30302 m, which three digits in metres would let pass
    Checked metres = all(expected.replace("VALUE", "-1.30302")).get(0);
    assertThat(metres.allowed()).isCloseTo(0.005, within(1e-12));
    assertThat(metres.holds()).isTrue();
  }

  @Test
  void digitsOfABareNumberCountInTheUnitsOfTheFile() {
    // 2 m = 78.740 in: half a unit of the third digit is 0.05 in
    Checked inches = check("resultant.arm about a", "-78.7", 3, "in");
    assertThat(inches.allowed()).isCloseTo(0.05 * 0.0254, within(1e-12));
    assertThat(inches.holds()).isTrue();
    assertThat(check("resultant.arm about a", "-78.6", 3, "in").holds()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "hinge.x, 0 N, 3, 0.5",
    "hinge.x, 0 N, 6, 0.0005",
    "hinge.moment about a, 0 N·m, 3, 1",
    "resultant.distance along a–b, 0 m, 2, 0.01",
    "basket.direction, 0 deg, 3, 0.0005",
    "hinge.x per basket, 0, 2, 0.005"
  })
  void aZeroIsHeldAgainstTheLoads(String ask, String value, int digits, double allowed) {
    assertThat(check(ask, value, digits).allowed()).isCloseTo(allowed, within(1e-12));
  }

  @Test
  void aZeroThatIsNoneFails() {
    assertThat(check("hinge.x", "0 N", 3).holds()).isTrue();
    assertThat(check("hinge.y", "0 N", 3).holds()).isFalse();
  }

  @Test
  void aZeroFollowsTheCase() {
    assertThat(check("hinge.x in half", "0 N", 3).allowed()).isEqualTo(0.25);
    assertThat(check("hinge.y in half", "500 N", 3).holds()).isTrue();
    assertThat(check("hinge.y in full", "500 N", 3).holds()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "270 deg, true",
    "-90 deg, true",
    "630 deg, true",
    "90 deg, false",
    "270.6 deg, false"
  })
  void anglesAreComparedModuloAFullTurn(String value, boolean holds) {
    assertThat(check("basket.direction", value, 3).holds()).isEqualTo(holds);
  }

  @Test
  void theScaleOfCouplesAloneIsTheirForceOverTheSize() {
    Checked checked =
        all("""
            format: 1
            device: turned
            points: {a: [0, 0], b: [2, 0]}
            members: {bar: [a, b]}
            connections: {a: {clamp: a, joins: [bar, ground]}}
            loads: {twist: {couple: 40 N·m, member: bar}}
            expect: {a.x: {value: 0, digits: 2}}
            """)
            .get(0);
    assertThat(checked.allowed()).isCloseTo(0.005 * 20, within(1e-12));
    assertThat(checked.holds()).isTrue();
  }

  @Test
  void anOutcomeMustBeTheSameWords() {
    Checked same =
        all(LEVER
                .replace("UNIT", "m")
                .replace("{ASK: {value: VALUE, digits: DIGITS}}", "{outcome: {value: in balance}}"))
            .get(0);
    assertThat(same.holds()).isTrue();
    assertThat(same.allowed()).isZero();
    Checked other =
        all(LEVER
                .replace("UNIT", "m")
                .replace("{ASK: {value: VALUE, digits: DIGITS}}", "{outcome: {value: no balance}}"))
            .get(0);
    assertThat(other.holds()).isFalse();
    assertThat(other.found()).isEqualTo(new Answer.Words("in balance"));
  }

  @Test
  void whatHasNoAnswerFails() {
    Checked checked = check("hinge.direction in full", "90 deg", 2);
    assertThat(checked.holds()).isTrue();
    Checked none =
        all(LEVER
                .replace("UNIT", "m")
                .replace("seek: {hand: {want: couple, member: lever}}\n", "")
                .replace(
                    "{ASK: {value: VALUE, digits: DIGITS}}", "{hinge.y: {value: 1000, digits: 1}}"))
            .get(0);
    assertThat(none.found()).isInstanceOf(Answer.Unanswered.class);
    assertThat(none.holds()).isFalse();
  }
}
