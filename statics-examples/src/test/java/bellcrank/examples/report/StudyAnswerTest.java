package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What studies come to, in words and as JSON, held against values by hand. */
final class StudyAnswerTest {

  private static final String LEVER =
      """
      format: 1
      device: lever
      points: {hinge: [0, 0], ram: [0.25, 0], grip: [1.6, 0]}
      members: {lever: {bars: [hinge, ram, grip]}}
      connections: {hinge: {pin: hinge, joins: [lever, ground]}}
      loads: {hand: {force: 220, direction: down, member: lever, at: grip}}
      seek: {push: {want: force, direction: up, member: lever, at: ram}}
      """;

  private static FileAnswer answer(String keys) {
    return FileAnswer.of("a.yaml", YamlFiles.parse(LEVER + keys), Optional.empty(), List.of());
  }

  private static FileAnswer sample(String name) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(name));
    return FileAnswer.of(name, file, Optional.empty(), List.of());
  }

  /** With blanks only between words. */
  private static String text(FileAnswer answer) {
    return ReportText.of(answer, answer.file().units()).replaceAll("\\s+", " ");
  }

  private static Map<String, Object> study(FileAnswer answer) {
    Map<String, Object> whole = object(JsonTree.parse(ReportJson.of(List.of(answer), List.of())));
    return object(first(whole, "files").get("study"));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> object(@Nullable Object tree) {
    return (Map<String, Object>) Objects.requireNonNull(tree);
  }

  private static List<?> list(Map<String, Object> tree, String name) {
    return (List<?>) Objects.requireNonNull(tree.get(name));
  }

  private static Map<String, Object> first(Map<String, Object> tree, String name) {
    return object(list(tree, name).get(0));
  }

  private static double number(Map<String, Object> tree, String name) {
    return ((Number) Objects.requireNonNull(tree.get(name))).doubleValue();
  }

  @Test
  void whatMattersMostAndTheWorstCaseAreTold() {
    FileAnswer answer =
        answer(
            "rough: {size of hand: {within: 10 %}, x of ram: {within: 5 mm}, x of grip: {normal: 1"
                + " cm}}\nstudy: {asks: [push]}\n");
    String text = text(answer);
    // push = 220 × 1.6 / 0.25 = 1408 N
    assertThat(text)
        .contains("1 % more of size of hand raises push by 1.00 % (14.1 N)")
        .contains("1 mm more of x of ram lowers push by 0.400 % (5.63 N)")
        .contains("size of hand ±141 N")
        // 198 × 1.6 / 0.255 and 242 × 1.6 / 0.245
        .contains("push lies between 1242 N and 1580 N")
        .contains("A normal distribution has no bounds, so x of grip stays as stated here.")
        .doesNotContain("Samples");
    Map<String, Object> figure = first(study(answer), "figures");
    Map<String, Object> worst = object(figure.get("worstCase"));
    assertThat(worst).containsEntry("how", "monotone");
    assertThat(number(object(worst.get("greatest")), "value"))
        .isCloseTo(242 * 1.6 / 0.245, within(1e-6));
    assertThat(list(figure, "effects")).hasSize(3);
  }

  @Test
  void theChanceThatALadderSlidesIsTheOneByHand() {
    Map<String, Object> samples = object(study(sample("picking-ladder-rough")).get("samples"));
    double share = number(first(samples, "chances"), "share");
    double byHand = (810 / (3.6 * 840) - 0.2) / 0.3;
    assertThat(share).isCloseTo(byHand, within(3 * Math.sqrt(byHand * (1 - byHand) / 5000)));
    Map<String, Object> figure = first(samples, "figures");
    assertThat(number(figure, "mean")).isCloseTo(225, within(1.0));
    Map<String, Object> bars = object(figure.get("histogram"));
    double all =
        list(bars, "counts").stream().mapToDouble(one -> ((Number) one).doubleValue()).sum();
    assertThat(all).isEqualTo(5000);
    assertThat(list(bars, "edges")).hasSize(list(bars, "counts").size() + 1);
  }

  @Test
  void samplesHaveAPictureEach() {
    FileAnswer answer = sample("barrel-derrick-rough");
    Map<String, String> pictures = SampleHistograms.of(answer, UnitSystem.SI);
    assertThat(pictures).containsOnlyKeys("hand", "stay.tension");
    assertThat(pictures.get("hand")).contains("should not be exceeded", "all numbers as stated");
    assertThat(SampleHistograms.of(sample("cellar-beam"), UnitSystem.SI)).isEmpty();
  }

  @Test
  void aSearchThatFailsItsExpectationFailsTheFile() {
    String search =
        "search: {f: {change: {x of ram: [0.15, 0.6]}, greatest: x of ram, goals: {push: {at least:"
            + " 2 kN}}, expect: {values: {x of ram: VALUE}, digits: 4}}}\n";
    FileAnswer right = answer(search.replace("VALUE", "0.176"));
    assertThat(right.holds()).isTrue();
    assertThat(CheckLines.of(right, UnitSystem.SI)).contains("the expectation holds");
    FileAnswer wrong = answer(search.replace("VALUE", "0.1761"));
    assertThat(wrong.holds()).isFalse();
    assertThat(CheckLines.of(wrong, UnitSystem.SI).replaceAll("\\s+", " "))
        .contains("1 of 1 expectation fails")
        .contains("expected x of ram 0.1761 m to 4 digits, found x of ram at 0.176000 m");
    assertThat(text(wrong)).contains("FAILS: expected x of ram 0.1761 m");
  }

  @Test
  void theLeastFigureAndTheNearestMissAreTold() {
    FileAnswer answer =
        answer(
            """
            search:
              least: {change: {x of ram: [0.2, 0.6], x of grip: [1, 2]}, least: push, expect: {values: {x of grip: 1}, reaches: 366.7, digits: 4}}
              most: {change: {x of ram: [0.2, 0.6]}, greatest: push}
              none: {change: {x of ram: [0.2, 0.6]}, goals: {push: {at most: 100 N}}}
              stands: {change: {x of ram: [0.2, 0.6]}, goals: {push: {equals: 704}}}
            """);
    assertThat(answer.holds()).isTrue();
    assertThat(text(answer))
        .contains("push comes to 366.7 N")
        .contains("push comes to 1760 N")
        .contains("x of ram at its greatest value and x of grip at its least value")
        .contains("no such numbers were found; the nearest miss: - x of ram at 0.6000 m")
        .contains("it comes to 586.7 N, missed by 486.7 N")
        .contains("x of ram at 0.5000 m - push is 704.0 N: it comes to 704.0 N, kept, just");
    List<?> searches = list(study(answer), "searches");
    assertThat(searches).hasSize(4);
    assertThat(object(searches.get(2))).containsEntry("kind", "nearest miss");
    assertThat(number(first(object(searches.get(2)), "goals"), "missedBy"))
        .isCloseTo(220 * 1.6 / 0.6 - 100, within(1e-6));
  }

  @Test
  void variantsAreToldWithTheirDifferences() {
    FileAnswer answer =
        answer("variants: {compare: {push: more}, changes: {long: {x of grip: 1.76}}}\n");
    assertThat(text(answer)).contains("1408 N, worst 1549 N, +10.0 %, best");
    Map<String, Object> row = first(study(answer), "variants");
    assertThat(number(object(list(row, "variants").get(1)), "change")).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void extremesOverCombinationsAreThoseByHand() {
    FileAnswer answer = sample("cellar-beam");
    Map<String, Object> combinations = object(study(answer).get("combinations"));
    assertThat(list(combinations, "cases")).hasSize(10);
    Map<String, Object> wall = first(combinations, "envelope");
    // beam 800 N at 2 m from the post, racks and cart at 3 m, of 6 m
    assertThat(number(object(wall.get("greatest")), "value"))
        .isCloseTo(1.35 * 800 / 3 + 1.5 * 1800 / 2 + 1.05 * 900 / 2, within(1e-6));
    assertThat(number(object(wall.get("least")), "value")).isCloseTo(800.0 / 3, within(1e-6));
    assertThat(text(answer))
        .contains("10 combinations; those that decide")
        .contains(
            "1.35 own weight + 1.5 stored + 1.05 rolled: own weight unfavourable, stored leading,");
  }

  @Test
  void influenceLinesAndTrainsAreThoseByHand() {
    FileAnswer answer = sample("cellar-beam");
    Map<String, Object> barrel = first(study(answer), "movingLoads");
    Map<String, Object> moment = object(list(barrel, "answers").get(2));
    // a quarter of the span, 6 m, at the middle
    assertThat(number(object(moment.get("greatest")), "value"))
        .isCloseTo(number(moment, "withoutIt") + 900 * 1.5, within(1e-6));
    Map<String, Object> cart = object(list(study(answer), "movingLoads").get(1));
    Map<String, Object> two = object(list(cart, "answers").get(1));
    assertThat(number(object(two.get("greatest")), "value"))
        .isCloseTo(number(two, "withoutIt") + 600 * 1.5 + 300 * 0.9, within(1e-6));
    assertThat(text(answer))
        .contains("0 m at 0 m, 1.500 m at 3.000 m, 0 m at 6.000 m, -1.000 m at 8.000 m")
        .contains("with the wheels 3.000 m and 1.800 m from wall");
  }

  @Test
  void aLineThatIsNotThereSaysWhy() {
    FileAnswer answer =
        answer("moving loads: {a: {load: hand, along: [hinge, grip], asks: [hinge.direction]}}\n");
    assertThat(text(answer)).contains("hinge.direction has no influence line: ");
    Map<String, Object> none = first(first(study(answer), "movingLoads"), "answers");
    assertThat(none).containsEntry("least", JsonTree.NULL);
  }

  @Test
  void extremesOverATravelTellWhere() {
    FileAnswer answer =
        answer(
            "drive: {turn: lever}\ntravel: {from: -10 deg, to: 60 deg}\n"
                + "combinations: {groups: {hand: {leading: 2, loads: hand}}, asks: [push], over:"
                + " travel}\n");
    assertThat(text(answer)).contains("over the combinations and the travel", "driven by");
  }

  @Test
  void theReportHasChaptersAndPictures() {
    FileAnswer answer = sample("barrel-derrick-rough");
    Making making = Making.of("1.0", List.of("a.yaml"));
    assertThat(ReportSheet.html(answer, UnitSystem.SI, making))
        .contains("When numbers are not known well", "How hand is spread over the samples");
    assertThat(ReportSheet.html(sample("cellar-beam"), UnitSystem.SI, making))
        .contains("Answers by the place of the moving load cart.");
  }

  @Test
  void percentilesAndInfluenceLinesAreATable() {
    String samples = StudyCsv.of(sample("picking-ladder-rough"), UnitSystem.SI).orElseThrow();
    List<String> lines = samples.lines().toList();
    assertThat(lines).hasSize(100);
    assertThat(lines.get(0)).isEqualTo("samples up to (%),floor.friction (N),friction factor");
    assertThat(Double.parseDouble(lines.get(50).split(",", -1)[1])).isCloseTo(225, within(1.0));
    String influence = StudyCsv.of(sample("cellar-beam"), UnitSystem.SI).orElseThrow();
    assertThat(influence)
        .startsWith("moving load,answer,place (m),with the load there,unit\r\n")
        .contains("one barrel,beam.moment at 3 m of wall–post,3,3050,N·m\r\n");
    assertThat(StudyCsv.of(sample("cider-press-search"), UnitSystem.SI)).isEmpty();
    assertThat(StudyCsv.of(answer(""), UnitSystem.SI)).isEmpty();
  }
}
