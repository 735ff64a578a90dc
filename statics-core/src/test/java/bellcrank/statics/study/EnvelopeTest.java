package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.study.Combinations.Combination;
import bellcrank.statics.study.Combinations.Permanent;
import bellcrank.statics.study.Combinations.Variable;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Combinations of loads, and extremes over cases and travel. */
class EnvelopeTest {

  /** A beam that sticks out beyond its second rest: the sack at its tip lifts its heel. */
  private static Device beam() {
    return Device.named("beam")
        .gravity(Vector.of(0, -10))
        .point("heel", 0, 0)
        .point("middle", 2, 0)
        .point("rest", 4, 0)
        .point("tip", 6, 0)
        .member("beam", "heel", "middle", "rest", "tip")
        .pin("heel", "heel", "beam", "ground")
        .roller("rest", "rest", "beam", "ground", Direction.UP)
        .weight("own", "beam", "middle", 20)
        .force("sack", "beam", "tip", Vector.of(0, -300))
        .force("hand", "beam", "middle", Vector.of(0, -100))
        .build();
  }

  private static List<Combination> combinations() {
    return Combinations.of(
        beam(),
        List.of(
            new Permanent("self-weight", List.of("own"), 1.35, 1),
            new Variable("sacks", List.of("sack"), 1.5, 1.05),
            new Variable("hand", List.of("hand"), 1.5, 0)));
  }

  @Test
  void allCombinationsOnce() {
    List<String> names = combinations().stream().map(one -> one.loadCase().name()).toList();
    assertThat(names)
        .containsExactly(
            "1.35 self-weight + 0 sacks + 0 hand",
            "1 self-weight + 0 sacks + 0 hand",
            "1.35 self-weight + 1.5 sacks + 0 hand",
            "1 self-weight + 1.5 sacks + 0 hand",
            "1.35 self-weight + 1.05 sacks + 1.5 hand",
            "1.35 self-weight + 0 sacks + 1.5 hand",
            "1 self-weight + 1.05 sacks + 1.5 hand",
            "1 self-weight + 0 sacks + 1.5 hand");
    assertThat(combinations().get(4).words())
        .isEqualTo(
            "self-weight 1.35 (unfavourable), sacks 1.05 (accompanying), hand 1.5 (leading)");
    assertThat(combinations().get(4).loadCase().factors())
        .isEqualTo(Map.of("own", 1.35, "sack", 1.05, "hand", 1.5));
  }

  /** Which of two groups leads makes no other case where both act with one factor either way. */
  @Test
  void theSameFactorsAreOneCase() {
    Device beam = beam();
    List<Combination> all =
        Combinations.of(
            beam,
            List.of(
                new Variable("sacks", List.of("sack"), 1.5, 1.5),
                new Variable("hand", List.of("hand"), 1.5, 1.5)));
    assertThat(all)
        .extracting(one -> one.loadCase().name())
        .containsExactly(
            "0 sacks + 0 hand", "1.5 sacks + 1.5 hand", "1.5 sacks + 0 hand", "0 sacks + 1.5 hand");
    List<LoadCase> cases = all.stream().map(Combination::loadCase).toList();
    Envelope envelope = Envelope.of(Model.of(beam), cases, List.of(Ask.parse("rest.normal")));
    // 10 · 20 · 2 / 4 for the beam, half of the hand, one and a half times the sack
    assertThat(envelope.rows().get(0).greatest().orElseThrow().value())
        .isCloseTo(100 + 1.5 * (50 + 450), within(1e-9));
  }

  @Test
  void factorsThatDifferByLittleAreCasesOfTheirOwn() {
    Device beam = beam();
    List<Combination> all =
        Combinations.of(
            beam, List.of(new Permanent("self-weight", List.of("own"), 1.000_002, 1.000_001)));
    assertThat(all).extracting(one -> one.loadCase().name()).doesNotHaveDuplicates().hasSize(2);
  }

  @Test
  void aCaseNamesLoadsOfTheDevice() {
    Model beam = Model.of(beam());
    List<LoadCase> wrong = List.of(new LoadCase("fair", Map.of("sak", 2.0), 1));
    List<Ask> asks = List.of(Ask.parse("rest.normal"));
    assertThatThrownBy(() -> Envelope.of(beam, wrong, asks))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("fair")
        .hasMessageContaining("\"sack\"");
    Envelope.Way way = new Envelope.Way(Drive.turn("beam"), -1, 1, List.of());
    assertThatThrownBy(() -> Envelope.over(beam, wrong, asks, way))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("\"sack\"");
  }

  @Test
  void mistakesInCombinations() {
    Device beam = beam();
    assertThatThrownBy(
            () ->
                Combinations.of(
                    beam, List.of(new Permanent("self-weight", List.of("owm"), 1.35, 1))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("self-weight")
        .hasMessageContaining("own");
    assertThatThrownBy(
            () ->
                Combinations.of(
                    beam,
                    List.of(
                        new Permanent("self-weight", List.of("own"), 1.35, 1),
                        new Variable("all", List.of("sack", "own"), 1.5, 0))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("not in self-weight");
    assertThatThrownBy(() -> new Variable("hand", List.of(), 1.5, 0))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least one");
    assertThatThrownBy(() -> Combinations.of(beam, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("groups");
    assertThatThrownBy(() -> new Permanent("own", List.of("own"), Double.NaN, 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("finite");
  }

  /** Worked by hand: the heel takes half of own and hand, and is lifted by half of the sack. */
  @Test
  void extremesOverCases() {
    List<LoadCase> cases = combinations().stream().map(Combination::loadCase).toList();
    Envelope envelope =
        Envelope.of(
            Model.of(beam()),
            cases,
            List.of(Ask.parse("heel.y on beam"), Ask.parse("rest.normal")));
    Envelope.Row heel = envelope.rows().get(0);
    assertThat(heel.greatest().orElseThrow().value()).isCloseTo(135 + 75, within(1e-9));
    assertThat(heel.greatest().orElseThrow().loadCase())
        .isEqualTo("1.35 self-weight + 0 sacks + 1.5 hand");
    assertThat(heel.least().orElseThrow().value()).isCloseTo(100 - 225, within(1e-9));
    assertThat(heel.least().orElseThrow().loadCase())
        .isEqualTo("1 self-weight + 1.5 sacks + 0 hand");
    Envelope.Row rest = envelope.rows().get(1);
    assertThat(rest.greatest().orElseThrow().value()).isCloseTo(135 + 675, within(1e-9));
    assertThat(rest.least().orElseThrow().value()).isCloseTo(100, within(1e-9));
    assertThat(rest.missing()).isEmpty();
  }

  /** A jib that is turned up by a stay: the envelope holds every curve of every case. */
  @Test
  void extremesOverTravel() {
    Device jib =
        Device.named("barrel derrick")
            .point("heel", 0, 0)
            .point("tip", 2, 0)
            .point("mast", 0, 3)
            .member("jib", "heel", "tip")
            .pin("heel", "heel", "jib", "ground")
            .line("stay", End.of("jib", "tip"), End.of("ground", "mast"))
            .force("barrel", "jib", "tip", Vector.of(0, -1000))
            .force("wind", "jib", "tip", Vector.of(-200, 0))
            .build();
    LoadCase calm = new LoadCase("calm", Map.of("wind", 0.0), 1);
    LoadCase storm = new LoadCase("storm", Map.of(), 1);
    Ask stay = Ask.parse("stay.tension");
    Envelope.Way way = new Envelope.Way(Drive.length("stay"), -1.5, 0.5, List.of());
    Envelope envelope = Envelope.over(Model.of(jib), List.of(calm, storm), List.of(stay), way);
    Envelope.Row row = envelope.rows().get(0);
    // moments about the heel, with L the length of the stay and a the slope of the jib:
    // T = L·(1000 − 200·tan a)/3 in the storm, L·1000/3 in calm air
    double longest = Math.hypot(2, 3) + 0.5;
    double slope = Math.tan(Math.asin((13 - longest * longest) / 12));
    assertThat(row.greatest().orElseThrow().value())
        .isCloseTo(longest * (1000 - 200 * slope) / 3, within(1e-6));
    assertThat(row.greatest().orElseThrow().loadCase()).isEqualTo("storm");
    assertThat(row.greatest().orElseThrow().drive().orElseThrow()).isCloseTo(0.5, within(1e-9));
    assertThat(envelope.trips()).hasSize(2);
    assertThat(row.least().orElseThrow().loadCase()).isEqualTo("storm");
    for (LoadCase one : List.of(calm, storm)) {
      Course course = (Course) Travel.of(jib, one, Drive.length("stay"), -1.5, 0.5, List.of());
      for (var sample : course.curve(stay).samples()) {
        assertThat(sample.value())
            .isBetween(
                row.least().orElseThrow().value() - 1e-9,
                row.greatest().orElseThrow().value() + 1e-9);
      }
    }
  }

  @Test
  void whatHasNoAnswerSaysSo() {
    Envelope stands =
        Envelope.over(
            Model.of(beam()),
            List.of(LoadCase.ALL_LOADS),
            List.of(Ask.parse("rest.normal")),
            new Envelope.Way(Drive.turn("beam"), -1, 1, List.of()));
    Envelope.Row row = stands.rows().get(0);
    assertThat(row.greatest()).isEmpty();
    assertThat(row.missing())
        .containsExactly(new Envelope.Missing("all loads", "nothing can move"));
    Device beam = beam();
    List<LoadCase> twice = List.of(LoadCase.ALL_LOADS, LoadCase.ALL_LOADS);
    assertThatThrownBy(() -> Envelope.of(Model.of(beam), twice, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("differ");
    assertThatThrownBy(() -> Envelope.of(Model.of(beam), List.of(), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least one");
    List<Ask> words = List.of(Ask.parse("outcome"));
    assertThatThrownBy(() -> Envelope.of(Model.of(beam), List.of(LoadCase.ALL_LOADS), words))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("number");
    List<Ask> cased = List.of(Ask.parse("rest.normal in case storm"));
    assertThatThrownBy(() -> Envelope.of(Model.of(beam), List.of(LoadCase.ALL_LOADS), cased))
        .isInstanceOf(ModelException.class);
  }
}
