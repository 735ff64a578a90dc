package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What gives first, in words and as JSON. */
class StrengthTextTest {

  private static final String LEVER =
      """
      loads: {hand: {force: 100, direction: down, member: lever, at: b}}
      connections: {a: {clamp: a, joins: [lever, ground]}}
      """;

  private static String text(String more) {
    return SmallReport.lever(LEVER + more).replaceAll("\\s+", " ");
  }

  private static FileAnswer answer(String sample) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(sample));
    return FileAnswer.of(sample, file, Optional.empty(), List.of());
  }

  private static String sample(String sample) {
    FileAnswer answer = answer(sample);
    return ReportText.of(answer, answer.file().units()).replaceAll("\\s+", " ");
  }

  @Test
  void theFirstIsToldWithLoadEffortAndPlaceOnTheTravel() {
    assertThat(sample("barrel-derrick-sized"))
        .contains("What gives first as \"barrel\" grows, over the travel method: allowable stress")
        .contains(
            "first: rope, working load limit, at 2.376 times (barrel 1426 N, crank 75.00 N·m,"
                + " rope.tension 1500 N), 0 % of the travel (turn -687.5 deg)")
        .contains("all multiples: looked for in steps, since other loads act as well")
        .contains("[####......] 44 % rope, working load limit")
        .contains("factor 1: not needed, the working load limit has its design factor in it [1]")
        .contains("not checked: - winch, stresses of axle–handle: no section and material")
        .contains("rope: tag of the rope (invented)");
  }

  @Test
  void aFactorOfOnesOwnIsToldWithItsReason() {
    assertThat(sample("prop-timber"))
        .contains("all multiples: all forces grow in proportion to it")
        .contains("factor 3: safety factor on characteristic strengths of timber")
        .contains("factor: timber is never straight")
        .contains("yard oak: invented");
  }

  @Test
  void whatIsNotReachedIsTold() {
    assertThat(sample("log-tongs-sized"))
        .contains(
            "not reached as it grows; used by the stated loads: - left chain, chain in its notch:"
                + " seat in the notch: 56.1 %");
  }

  @Test
  void withoutLoadsThatGrowTheStatedOnesAreTold() {
    // M/S = 100 N·m × 6 / (10 mm × 20² mm²) = 150 MPa, over 235 / 1.67 = 140.7 MPa
    assertThat(
            text(
                """
                sizing:
                  method: allowable
                  parts: {lever: {section: {rectangle: [10 mm, 20 mm]}, material: S235 (EN 10025-2)}}
                """))
        .contains("How far the stated loads use each part")
        .contains("[#########>] 107 % lever, stress at the top face of a–m, at a")
        .contains("[1], [2] linear interaction");
  }

  @Test
  void nothingMayGive() {
    assertThat(text("sizing: {method: resistance}\ndriving: {loads: hand}\n"))
        .contains("method: design resistance")
        .contains("nothing that is checked gives, however large");
  }

  @Test
  void aDynamicFactorIsTold() {
    assertThat(
            text(
                """
                cases: {jerk: {dynamic: 1.5}}
                sizing: {method: allowable, ratings: {a: {limit: 300, source: a tag}}}
                driving: {loads: all}
                """))
        .contains("loads: dynamic factor 1.5 of the case \"jerk\" on all given loads")
        .contains("first: a, working load limit, at 2.000 times (hand 300.0 N)");
  }

  @Test
  void theDeviceThatGivesWayIsRankedWithTheChecks() {
    String text =
        SmallReport.of(
                """
                device: crate
                points: {foot: [0, 0], side: [0, 1]}
                members: {crate: {points: [foot, side], weight: {value: 100, at: foot}}}
                connections:
                  foot: {contact base: foot, joins: [crate, ground], push: up, width: 4, friction: 0.5}
                loads: {hand: {force: 10, direction: right, member: crate, at: side}}
                sizing: {method: allowable, ratings: {foot: {limit: 500, source: a tag}}}
                driving: {loads: hand, tell: [foot.y]}
                """)
            .replaceAll("\\s+", " ");
    assertThat(text)
        .contains("first: the device gives way: ")
        .contains("at 5.000 times (hand 50.00 N, foot.y 100.0 N)")
        // the motion is told once, above
        .contains("[##........] 20 % the device gives way: foot slides right - at")
        .contains("by equilibrium and friction alone")
        .contains("not reached as it grows; used by the stated loads: - foot, working load limit");
  }

  @Test
  void aReasonNotToCheckIsToldOnce() {
    String text =
        SmallReport.of(
                """
                device: lid without a stay
                points: {A: [0, 0], B: [1, 0]}
                members: {lid: [A, B]}
                connections: {hinge: {pin: A, joins: [lid, ground]}}
                loads: {keg: {force: 100, direction: down, member: lid, at: B}}
                sizing:
                  method: allowable
                  parts: {lid: {section: {rectangle: [200 mm, 30 mm]}, material: softwood C24 (EN 338)}}
                """)
            .replaceAll("\\s+", " ");
    assertThat(text)
        .contains("; lid, shear of A–B: the device is not in balance")
        .containsOnlyOnce("so it carries no reactions");
  }

  @Test
  void whatCannotBeDrivenIsLookedAtAsDrawn() {
    assertThat(
            text(
                """
                sizing: {method: allowable, ratings: {a: {limit: 300, source: a tag}}}
                driving: {loads: hand}
                drive: {turn: lever}
                travel: {from: 0, to: 10 deg}
                """))
        .contains("it cannot be driven as stated, so only the drawn pose is looked at")
        .contains("at 3.000 times (hand 300.0 N)");
  }

  @Test
  void anExpectationThatHasNoAnswerFails() {
    assertThat(
            text(
                """
                sizing: {method: allowable, ratings: {a: {limit: 300, source: a tag}}}
                driving: {loads: hand}
                expect:
                  "utilisation of b: shear": {value: 1, digits: 1}
                  "multiple of b: shear": {value: 1, digits: 1}
                  first drive: {value: 1, digits: 1}
                  first check: {value: shear}
                """))
        .contains("FAILS: utilisation of b: shear = 1 to 1 digit, found")
        .contains("no such check was made: b: shear")
        .contains("no multiple is told for b: shear")
        .contains("nothing is driven")
        .contains("FAILS: first check = shear, found working load limit");
  }

  @Test
  void theNumbersAreInTheJson() {
    Object tree = JsonTree.parse(ReportJson.of(List.of(answer("barrel-derrick-sized")), List.of()));
    Map<?, ?> strength = (Map<?, ?>) at(at(tree, "files", 0, "answers", 0), "strength");
    assertThat(at(strength, "method", "kind")).isEqualTo("allowable");
    assertThat(at(strength, "driving")).isEqualTo(List.of("barrel"));
    assertThat(at(strength, "ranked", 0, "certainty")).isEqualTo("bracketed");
    assertThat(at(strength, "ranked", 0, "stated", "rule")).isEqualTo("working load limit");
    assertThat(((Number) at(strength, "ranked", 0, "multiple")).doubleValue())
        .isBetween(2.375, 2.377);
    assertThat(at(strength, "ranked", 0, "told", 0, "ask")).isEqualTo("crank");
    assertThat(at(strength, "notChecked", 0, "part")).isEqualTo("winch");
  }

  private static Object at(Object tree, Object... path) {
    Object here = tree;
    for (Object step : path) {
      Object next =
          step instanceof Integer index
              ? ((List<?>) here).get(index)
              : ((Map<?, ?>) here).get(step);
      assertThat(next).as(String.valueOf(step)).isNotNull();
      here = next == null ? "" : next;
    }
    return here;
  }

  @ParameterizedTest
  @CsvSource({
    "0, [..........]   0 %",
    "0.004, [#.........]   0 %",
    "0.58, [######....]  58 %",
    "1, [##########] 100 %",
    "1.01, [#########>] 101 %",
    "12, [#########>]  more"
  })
  void theBarShowsTheShare(double share, String bar) {
    assertThat(UsedBar.of(share).replace(Wrapping.UNBROKEN, ' ')).isEqualTo(bar);
  }
}
