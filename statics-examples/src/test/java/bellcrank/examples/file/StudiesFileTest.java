package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Goal;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.Uncertain;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rough numbers, searches, variants, combinations and moving loads in a file. */
final class StudiesFileTest {

  private static final String DEVICE =
      """
      format: 1
      device: x
      units: {length: mm, force: N}
      points: {hinge: [0, 0], ram: [250, 0], grip: [1600, 0]}
      members: {lever: {bars: [hinge, ram, grip], weight: 60}}
      connections: {hinge: {pin: hinge, joins: [lever, ground]}}
      loads:
        hand: {force: 220, direction: down, member: lever, at: grip}
        bag: {weight: 2 kg, member: lever, at: grip}
      seek: {push: {want: force, direction: up, member: lever, at: ram}}
      """;

  private static final String STUDY = "study: {asks: [push]}\n";

  private static Studies read(String keys) {
    DeviceFile file = Reads.file(DEVICE + keys);
    String written = DeviceFileWriter.write(file);
    assertThat(Reads.file(written)).as(written).isEqualTo(file);
    return file.inquiries().studies();
  }

  private static List<String> problems(String keys) {
    return Reads.problems(DEVICE + keys);
  }

  /** One slip is one message: what follows from it is not told as well. */
  @Test
  void slipsAreToldOnceAndWithWhatWasMeant() {
    assertThat(problems("search: {short: {change: {x of grip: [2 m, 1 m]}, least: x of grip}}\n"))
        .containsExactly(
            "11:38: search → short → change → x of grip: found bounds 2 m to 1 m; wanted: the least"
                + " one first, the other above it");
    assertThat(
            problems(
                "search: {short: {change: {x of grip: [1 m, 2 m]}, goals: {push: {most: 3}}}}\n"))
        .containsExactly(
            "11:66: search → short → goals → push → most: found the key \"most\"; wanted: one of the"
                + " keys at most, at least, equals");
    assertThat(problems("rough: {sise of hand: {within: 1 N}}\n" + STUDY))
        .containsExactly(
            "11:9: rough → sise of hand: found \"sise of hand\"; wanted: a number of the device; the"
                + " nearest is \"size of …\"");
    assertThat(problems("rough: {size of hand: {triangular: [2 N, 1 N, 3 N]}}\n" + STUDY))
        .containsExactly(
            "11:36: rough → size of hand → triangular: found [2 N, 1 N, 3 N]; wanted: least,"
                + " likeliest and greatest value, in this order");
  }

  @Test
  void nothingIsStudiedUnlessItIsStated() {
    assertThat(read("")).isEqualTo(Studies.NOTHING);
    assertThat(Studies.NOTHING.isEmpty()).isTrue();
  }

  @Test
  void everySpreadComesBack() {
    Studies studies =
        read(
            """
            rough:
              size of hand: {within: 10 %}
              x of ram: {within: 5 mm}
              y of ram: {plus: 2, minus: 0.1 mm}
              x of grip: {uniform: [1.5 m, 1700]}
              y of grip: {normal: 3 mm}
              direction of hand: {normal: 2 deg, mean: -88 deg}
              mass of bag: {triangular: [1 kg, 2 kg, 4 kg]}
            """
                + STUDY);
    assertThat(studies.rough())
        .contains(new Uncertain(Input.size("hand"), new Spread.Within(22, 22)))
        .contains(new Uncertain(Input.x("ram"), new Spread.Within(0.005, 0.005)))
        .contains(new Uncertain(Input.y("ram"), new Spread.Within(0.0001, 0.002)))
        .contains(new Uncertain(Input.x("grip"), new Spread.Uniform(1.5, 1.7)))
        .contains(new Uncertain(Input.y("grip"), new Spread.Normal(0, 0.003)))
        .contains(new Uncertain(Input.mass("bag"), new Spread.Triangular(1, 2, 4)))
        .hasSize(7);
    Spread.Normal direction = (Spread.Normal) studies.rough().get(5).spread();
    assertThat(Math.toDegrees(direction.mean())).isCloseTo(-88, within(1e-12));
  }

  @Test
  void aStudyComesBack() {
    StudyPlan plan =
        read("""
                rough: {size of hand: {within: 10 %}}
                study:
                  asks: [push, hinge.y]
                  samples: 500
                  seed: 9
                  exceeds: {push: 2 kN}
                  falls below: {hinge.y: -900 N, push: 1 kN}
                  slips: any
                  tips: [hinge]
                """)
            .study()
            .orElseThrow();
    assertThat(plan.figures()).containsExactly(Figure.parse("push"), Figure.parse("hinge.y"));
    assertThat(plan.samples()).isEqualTo(500);
    assertThat(plan.seed()).isEqualTo(9);
    assertThat(plan.chances()).hasSize(5).contains(Happening.slips(), Happening.tips("hinge"));
  }

  @Test
  void searchesComeBack() {
    List<SearchPlan> plans =
        read("""
                search:
                  far out:
                    change: {x of ram: [150, 600]}
                    greatest: x of ram
                    goals: {push: {at least: 1.5 kN, at most: 9 kN}, hinge: {at most: 2 kN}}
                    stands: true
                    expect: {values: {x of ram: 0.2667 m}, digits: 4, source: me}
                  least push:
                    change: {x of ram: [150, 600], mass of bag: [1 kg, 3 kg]}
                    least: push
                    stands: [all loads]
                    expect: {values: {mass of bag: 1 kg}, reaches: 600 N, digits: 1}
                  any: {change: {y of ram: [-10, 20]}, goals: {hinge.x: {equals: 0 N}}, expect: {values: none}}
                """)
            .searches();
    assertThat(plans).extracting(SearchPlan::name).containsExactly("far out", "least push", "any");
    assertThat(plans.get(0).aim())
        .hasValue(new SearchPlan.Aim(true, Optional.empty(), Optional.of(Input.x("ram"))));
    assertThat(plans.get(0).goals()).hasSize(3).contains(Goal.stands());
    assertThat(plans.get(1).goals()).containsExactly(Goal.stands("all loads"));
    assertThat(plans.get(2).expected().orElseThrow().values()).isEmpty();
  }

  @Test
  void variantsCombinationsAndMovingLoadsComeBack() {
    Studies studies =
        read(
            """
            variants:
              compare: {push: more, hinge: less, hinge.x: neither}
              changes:
                long lever: {x of grip: 1.9 m}
                both: {x of grip: 1.9 m, mass of bag: 3 kg}
            combinations:
              groups:
                own: {unfavourable: 1.35, favourable: 1, loads: [lever weight]}
                bag: {unfavourable: 1.1, loads: bag}
                hand: {leading: 1.5, loads: hand}
              asks: [push, hinge.y]
            moving loads:
              bag: {load: bag, along: [hinge, ram, grip], asks: [push]}
              two:
                {load: hand, along: [hinge, grip], on: lever, case: all loads, asks: [push, hinge.y],
                train: [{force: 600}, {force: 300 N, behind: 100}]}
            """);
    assertThat(studies.variants().orElseThrow().changes()).hasSize(2);
    assertThat(studies.combinations().orElseThrow().groups()).hasSize(3);
    assertThat(studies.moving()).hasSize(2);
    assertThat(studies.moving().get(1).train().orElseThrow().length()).isEqualTo(0.1);
  }

  @Test
  void extremesOverATravelComeBack() {
    String drive = "drive: {turn: lever}\ntravel: {from: -1 deg, to: 10 deg}\n";
    Studies studies =
        read(
            drive
                + """
                combinations: {groups: {hand: {leading: 1.5, loads: hand}}, asks: [push], over: travel}
                search: {a: {change: {x of ram: [150, 600]}, goals: {stroke: {at least: 1 deg}}}}
                """);
    assertThat(studies.combinations().orElseThrow().overTravel()).isTrue();
    assertThat(studies.searches().get(0).goals().get(0).text()).contains("at least");
  }

  @Test
  void oneNumberOfSeveralPartsComesBack() {
    Studies studies =
        read(
            """
            rough:
              y of [hinge, ram, grip]: {within: 5}
              "size of [hand]": {within: 10 %}
            study: {asks: [push]}
            search: {a: {change: {"x of [grip]": [1000, 2000]}, least: push}}
            """);
    assertThat(studies.rough())
        .extracting(one -> one.input().text())
        .containsExactly("y of [hinge, ram, grip]", "size of hand");
    assertThat(problems("rough: {\"x of [ram, grip]\": {within: 5}}\n" + STUDY).get(0))
        .startsWith("11:9: rough → x of [ram, grip]: found value")
        .contains("stated alike at each");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "rough: {x of ran: {within: 5}}¦11:9: rough → x of ran: found \"ran\"; wanted: ¦ram",
        "rough: {size of ram: {within: 5}}¦11:9: rough → size of ram: ¦hand",
        "rough: {friktion of ram: {within: 5}}¦11:9: rough → friktion of ram: ¦friction",
        "rough: {x of ram: {uniform: [300, 200]}}¦11:29: rough → x of ram → uniform: found bounds"
            + " 300 to 200; wanted: the least one first¦",
        "rough: {x of ram: {uniform: [300, 300]}}¦11:29: rough → x of ram → uniform: ¦a width above"
            + " 0",
        "rough: {x of ram: {within: 0}}¦11:28: rough → x of ram → within: ¦a width above 0",
        "rough: {x of ram: {within: 5 N}}¦11:28: rough → x of ram → within: found \"5 N\"¦length",
        "rough: {y of ram: {within: 5 %}}¦11:28: rough → y of ram → within: found \"5 %\"¦a share of"
            + " 0 is nothing",
        "rough: {x of ram: {normal: -1}}¦11:28: rough → x of ram → normal: ¦above 0",
        "rough: {x of ram: {triangular: [200, 100, 300]}}¦11:32: rough → x of ram → triangular: ¦least,"
            + " likeliest and greatest value, in this order",
        "rough: {distance of ram from hinge: {within: 5}, x of ram: {within: 5}}¦11:8: rough: found"
            + " value¦x of ram leaves as it is",
        "rough: {x of ram: {within: 1e-18}}¦11:8: rough: found spread¦shows beside its value",
        "rough: {x of ram: {spread: 5}}¦11:20: rough → x of ram → spread: ¦within"
      })
  void whatIsWrongWithRoughNumbersIsSaid(String text, String start, String rest) {
    List<String> problems = problems(text + "\n" + STUDY);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).startsWith(start).contains(rest == null ? "" : rest);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "study: {asks: [pusch]}¦12:16: study → asks: ¦push",
        "study: {asks: []}¦12:15: study → asks: ¦at least one ask",
        "study: {asks: [first failure]}¦12:16: study → asks: ¦driving",
        "study: {asks: [outcome]}¦12:16: study → asks: ¦answered by a number",
        "study: {asks: [push], samples: 9, exceeds: {push: 3 m}}¦12:51: study → exceeds → push: ¦force",
        "study: {asks: [push], samples: 9, slips: [henge]}¦12:43: study → slips: ¦hinge",
        "study: {asks: [push], slips: any}¦12:8: study: ¦samples"
      })
  void whatIsWrongWithAStudyIsSaid(String text, String start, String rest) {
    List<String> problems = problems("rough: {x of ram: {within: 5}}\n" + text + "\n");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).startsWith(start).contains(rest);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "{change: {x of ran: [1, 2]}, least: push}¦11:23: search → a → change → x of ran: ¦ram",
        "{change: {x of ram: [2, 1]}, least: push}¦11:33: search → a → change → x of ram: found"
            + " bounds 2 to 1¦the least one first",
        "{change: {x of ram: 2}, least: push}¦11:33: search → a → change → x of ram: ¦a search needs"
            + " an end",
        "{change: {x of ram: [1, 2]}, goals: {push: {at most: 3 mm}}}¦11:66: search → a → goals →"
            + " push → at most: ¦force",
        "{change: {x of ram: [1, 2]}, goals: {push: {}}}¦11:56: search → a → goals → push: ¦at most",
        "{change: {x of ram: [1, 2]}, goals: {push: {at most: 1, at least: 2}}}¦11:56: search → a →"
            + " goals → push: ¦the least one first",
        "{change: {x of ram: [1, 2]}, stands: [storm]}¦11:51: search → a → stands: ¦storm",
        "{change: {x of ram: [1, 2]}}¦11:10: search → a: ¦a goal",
        "{change: {distance of ram from hinge: [1, 2], x of ram: [1, 2]}, least: push}¦11:22: search →"
            + " a → change: found value¦x of ram leaves as it is"
      })
  void whatIsWrongWithASearchIsSaid(String text, String start, String rest) {
    List<String> problems = problems("search: {a: " + text + "}\n");
    assertThat(problems).isNotEmpty();
    assertThat(problems.get(0)).startsWith(start).contains(rest);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "variants: {compare: {push: best}, changes: {a: {x of ram: 1}}}¦neither",
        "variants: {compare: {push: more}, changes: {a: {x of ran: 1}}}¦ram",
        "variants: {compare: {push: more}, changes: {a: {distance of ram from hinge: 1, x of ram: 2}}}¦x"
            + " of ram leaves as it is",
        "variants: {compare: {push: more}, changes: {as stated: {x of ram: 1}}}¦each name once",
        "combinations: {groups: {a: {leading: 1, loads: hund}}, asks: [push]}¦hand",
        "combinations: {groups: {a: {leading: 1, loads: hand}, b: {leading: 1, loads: hand}}, asks:"
            + " [push]}¦not in a",
        "combinations: {groups: {a: {leading: 1, loads: hand}}, asks: [push], over: travel}¦drive",
        "moving loads: {a: {load: hand, along: [hinge, grap], asks: [push]}}¦grip",
        "moving loads: {a: {load: lever, along: [hinge, grip], asks: [push]}}¦force other than zero",
        "moving loads: {a: {load: hand, along: [hinge, grip], asks: [push], train: [{force: 1},"
            + " {force: 1, behind: -1}]}}¦or more",
        "moving loads: {a: {load: hand, along: [hinge, grip], on: lover, asks: [push]}}¦lever"
      })
  void whatIsWrongWithTheOthersIsSaid(String text, String wanted) {
    List<String> problems = problems(text + "\n");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).startsWith("11:").contains(wanted);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rough: {x of ram: {within: 5}}\n", STUDY})
  void roughNumbersAndTheirStudyGoTogether(String text) {
    assertThat(problems(text)).hasSize(1);
  }

  @Test
  void aFileCannotBeMadeOfWhatItCannotSay() {
    Uncertain one = Uncertain.within(Input.x("ram"), 0.1);
    StudyPlan plan = new StudyPlan(List.of(Figure.parse("push")), 0, 1, List.of());
    DeviceFile file = Reads.file(DEVICE);
    assertThatThrownBy(() -> studies(List.of(one, one), plan)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> studies(List.of(), plan)).isInstanceOf(ModelException.class);
    Studies other = studies(List.of(Uncertain.within(Input.x("rum"), 0.1)), plan);
    assertThatThrownBy(() -> file.with(inquiries(other))).hasMessageContaining("ram");
    Studies twice =
        studies(
            List.of(Uncertain.within(Input.parse("distance of ram from hinge"), 0.1), one), plan);
    assertThatThrownBy(() -> file.with(inquiries(twice))).hasMessageContaining("x of ram");
    Studies right = studies(List.of(one), plan);
    assertThat(file.with(inquiries(right)).inquiries().studies()).isEqualTo(right);
  }

  private static Studies studies(List<Uncertain> rough, StudyPlan plan) {
    return new Studies(
        rough, Optional.of(plan), List.of(), Optional.empty(), Optional.empty(), List.of());
  }

  private static Inquiries inquiries(Studies studies) {
    return new Inquiries(List.of(), List.of(), List.of(), List.of(), List.of(), false, studies);
  }

  @Test
  void theFirstFailureIsTheOneOfTheDriving() {
    String keys =
        """
        rough: {mass of barrel: {within: 10 %}}
        study: {asks: [first failure]}
        variants: {compare: {first failure: more}, changes: {a: {mass of barrel: 50 kg}}}
        """;
    String sized =
        SharedFiles.devices().stream()
            .filter(one -> one.endsWith("barrel-derrick-sized.yaml"))
            .map(SharedFiles::text)
            .findFirst()
            .orElseThrow();
    DeviceFile file = Reads.file(sized + keys);
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
    StudyPlan plan = file.inquiries().studies().study().orElseThrow();
    assertThat(plan.figures())
        .containsExactly(Figure.firstFailure(file.driving().orElseThrow().variation()));
  }
}
