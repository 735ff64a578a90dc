package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.units.UnitSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What searches, winches, measured lines and carrying come to, in words and as JSON. */
final class InquiriesAnswerTest {

  private static final String LEVER =
      """
      format: 1
      device: lever
      points: {A: [0, 0], B: [2, 0], C: [0, 2]}
      members: {m: [A, B]}
      connections: {pin: {pin: A, joins: [m, ground]}, rope: {line: [B, C], joins: [m, ground]}}
      loads: {stone: {weight: 100, member: m, at: B}}
      """;

  private static FileAnswer answer(String text) {
    return FileAnswer.of("a.yaml", YamlFiles.parse(text), Optional.empty(), List.of());
  }

  private static FileAnswer sample(String name) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(name));
    return FileAnswer.of(name, file, Optional.empty(), List.of());
  }

  /** With blanks only between words. */
  private static String text(FileAnswer answer) {
    return ReportText.of(answer, answer.file().units()).replaceAll("\\s+", " ");
  }

  private static final String FIND =
      "find: {f: {unknown: {force: push}, from: 0, to: 100, ask: RANGE}}\n";

  private static String found(String ask) {
    return text(
        answer(
            LEVER.replace(
                    "at: B}}", "at: B}, push: {force: 1, direction: right, member: m, at: B}}")
                + FIND.replace("RANGE", ask)));
  }

  @Test
  void nowhereAlwaysAndHereAreTold() {
    assertThat(found("rope.size, equals: 60")).contains("nowhere; it comes nearest at");
    assertThat(found("pin.y, equals: 0")).contains("at every value looked at");
    // the rope pulls 100 √2; its level part and the push are taken by the pin
    assertThat(found("pin.x, equals: 40")).contains("looked for from 0 N to 100.0 N: - 60.00 N");
  }

  @Test
  void aPoleIsNoSolution() {
    String text =
        text(
            answer(
                LEVER
                    + "find: {f: {unknown: {place: C, along: up}, from: -1, to: 1, ask: rope,"
                    + " equals: 0}}\n"));
    assertThat(text).contains("nowhere");
  }

  @Test
  void whatIsExpectedDecides() {
    String file =
        LEVER
            + "find: {f: {unknown: {mass: stone}, from: 1 kg, to: 20 kg, ask: pin.x, equals: 98.0665,"
            + " expect: VALUES}}\n";
    assertThat(answer(file.replace("VALUES", "{values: [10 kg], digits: 5}")).holds()).isTrue();
    assertThat(answer(file.replace("VALUES", "{values: []}")).holds()).isFalse();
    assertThat(answer(file.replace("VALUES", "{values: [9 kg, 10 kg], digits: 5}")).holds())
        .isFalse();
    FileAnswer wrong = answer(file.replace("VALUES", "{values: [10.01 kg], digits: 4}"));
    assertThat(wrong.holds()).isFalse();
    assertThat(text(wrong)).contains("FAILS: expected 10.01 kg to 4 digits");
    assertThat(CheckLines.of(wrong, UnitSystem.SI).replaceAll("\\s+", " "))
        .startsWith(
            "a.yaml: 1 of 1 expectation fails f: expected 10.01 kg to 4 digits, found 10.0000");
  }

  @Test
  void aWinchNeedsALineThatPulls() {
    String winch =
        "winches: {w: {crank: 0.3, hauls: ASK, drum: {radius: 0.05, rope: 0.01, turns: 9}}}\n";
    assertThat(text(answer(LEVER + winch.replace("ASK", "rope"))))
        .contains("Winch: w pull in its line: rope = 141.4 N, as drawn");
    assertThat(text(answer(LEVER + winch.replace("ASK", "rope.compression"))))
        .contains("not told: it is negative, and a line can only pull");
  }

  @Test
  void theWinchesOfTheDerrickAreThoseWorkedByHand() {
    FileAnswer answer = sample("derrick-hand-winch");
    assertThat(answer.holds()).isTrue();
    CaseSolution solution = answer.cases().get(0).solution();
    WinchAnswer crank = WinchAnswer.of(answer.file().inquiries().winches().get(0), solution);
    assertThat(crank.layers()).hasSize(2);
    assertThat(crank.layers().get(0).force().orElseThrow())
        .isCloseTo(550 * 0.055 / 0.72, within(1e-9));
    assertThat(crank.layers().get(1).force().orElseThrow())
        .isCloseTo(550 * 0.065 / 0.72, within(1e-9));
    double onFirst = 2 * Math.PI * 0.055 * 10 - 1;
    double turns = onFirst / (2 * Math.PI * 0.055) + (3 - onFirst) / (2 * Math.PI * 0.065);
    assertThat(crank.haul().orElseThrow().cycles()).isCloseTo(3 * turns, within(1e-9));
    assertThat(crank.haul().orElseThrow().lineWork()).isCloseTo(1650, within(1e-9));
    WinchAnswer motor = WinchAnswer.of(answer.file().inquiries().winches().get(2), solution);
    assertThat(motor.layers()).hasSize(3);
    assertThat(motor.lastStrongLayer()).isEqualTo(1);
    assertThat(text(answer))
        .contains("luffing rope: 554.4 N while it is deflected")
        .contains("beside it, rope.tension = 550.0 N")
        .contains("7.466 m - 9.429 m");
  }

  @Test
  void carryingIsToldOnceForTheFile() {
    String text =
        text(
            answer(
                LEVER
                    + "hang: {a: {from: A}, b: {from: B}}\nbalance point: {c: {line: [C, A]}}\n"));
    assertThat(text)
        .contains("a: hung from \"A\", the whole device turns by -90.00 deg")
        .contains("b: hung from \"B\", the whole device hangs however it is put")
        .contains("c: the whole device: the line is plumb");
  }

  @Test
  void efficiencyIsFollowedAndItsGapTold() {
    FileAnswer answer = sample("trough-lid-stiff-hinge");
    assertThat(answer.holds()).isTrue();
    TravelAnswer travel =
        TravelAnswer.of(answer.file(), answer.file().device().cases().get(0)).orElseThrow();
    double c = 0.04 * Math.sin(Math.atan(0.4));
    for (TravelAnswer.Row row : travel.rows()) {
      double cos = Math.cos(row.drive());
      assertThat(((Answer.Value) row.answers().get(0)).si())
          .isCloseTo((0.8 * cos + c) / (0.8 * cos + 2 * c), within(1e-8));
      assertThat(((Answer.Value) row.answers().get(1)).si())
          .isCloseTo((0.8 * cos - 2 * c) / (0.8 * cos - c), within(1e-8));
    }
  }

  @Test
  void withoutFrictionItIsSaidSo() {
    String text =
        text(
            answer(
                LEVER
                    + "advantage: {effort: rope, resistance: stone}\ndrive: {length: rope}\n"
                    + "travel: {from: 0, to: 0.5, steps: 2}\ncurves: [advantage.efficiency]\n"));
    assertThat(text)
        .contains("advantage.efficiency: 1.000 all the way")
        .contains("no part has friction or losses");
  }

  @Test
  void restIsToldInJsonAsWell() {
    String json = ReportJson.of(List.of(sample("trough-lid-counterweight")), List.of());
    Map<?, ?> file = first(JsonTree.parse(json), "files");
    Map<?, ?> answer = first(file, "answers");
    assertThat(first(answer.get("travel"), "rests")).containsEntry("kind", "against end");
    assertThat(first(answer, "finds")).containsEntry("holds", true);
    assertThat((Double) first(file, "hangs").get("arm")).isCloseTo(0.103016, within(1e-5));
  }

  private static Map<String, Object> first(@Nullable Object tree, String list) {
    Map<?, ?> map = (Map<?, ?>) Objects.requireNonNull(tree);
    List<?> all = (List<?>) Objects.requireNonNull(map.get(list));
    Map<String, Object> fields = new HashMap<>();
    ((Map<?, ?>) all.get(0)).forEach((key, value) -> fields.put((String) key, value));
    return fields;
  }
}
