package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.ToleranceBox.How;
import bellcrank.statics.study.ToleranceBox.Sense;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worst cases that can be written down. */
final class ToleranceBoxTest {

  private static final double GRAVITY = 9.80665;
  private static final Figure RAM = Figure.parse("ram");

  private static Model press() {
    return Model.of(StudyYard.press());
  }

  @Test
  void aMonotoneFigureIsWorstAtItsCorners() {
    ToleranceBox box =
        ToleranceBox.of(
            press(),
            List.of(
                Uncertain.within(Input.x("ram"), 0.05),
                Uncertain.uniform(Input.size("hand"), 200, 260),
                Uncertain.triangular(Input.mass("own weight"), 5, 6, 8),
                Uncertain.within(Input.y("grip"), 0.02)),
            RAM);
    assertThat(box.how()).isEqualTo(How.MONOTONE);
    assertThat(box.senses()).containsExactly(Sense.FALLS, Sense.RISES, Sense.RISES, Sense.NONE);
    // all corners and the places within, by exact rates
    assertThat(box.exactPlaces()).isEqualTo(16 + 32);
    assertThat(box.otherPlaces()).isZero();
    FigureAt least = box.least().orElseThrow();
    FigureAt greatest = box.greatest().orElseThrow();
    assertThat(least.si()).isCloseTo((200 * 1.6 + 5 * GRAVITY * 0.8) / 0.3, within(1e-9));
    assertThat(greatest.si()).isCloseTo((260 * 1.6 + 8 * GRAVITY * 0.8) / 0.2, within(1e-9));
    assertThat(least.inputs()).containsExactly(0.3, 200.0, 5.0, 0.1);
    assertThat(greatest.inputs()).containsExactly(0.2, 260.0, 8.0, 0.1);
    assertThat(least.dimension()).isEqualTo(Dimension.FORCE);
    assertThat(box.missing()).isEmpty();
    assertThat(box.outcomes()).extracting(Counted::what).containsExactly("holds");
    assertThat(box.words(UnitSystem.SI))
        .anyMatch(text -> text.startsWith("ram lies between 1197 N and 2394 N; with all numbers"))
        .anyMatch(
            text ->
                text.contains(
                    "it rises with size of hand, mass of own weight and falls with x of ram and"
                        + " does not change with y of grip"))
        // what changes nothing is no part of where an end is
        .contains(
            "It is least with x of ram at 0.3000 m, size of hand at 200.0 N, mass of own weight at"
                + " 5.000 kg.");
  }

  @Test
  void aForceMayBeNoneAtAnEndOfItsBounds() {
    ToleranceBox box =
        ToleranceBox.of(
            press(),
            List.of(
                Uncertain.uniform(Input.size("hand"), 0, 260),
                Uncertain.triangular(Input.mass("own weight"), 5, 6, 8)),
            RAM);
    // without a force its size cannot be read there, so steps tell what it does
    assertThat(box.how()).isEqualTo(How.MONOTONE);
    assertThat(box.senses()).containsExactly(Sense.RISES, Sense.RISES);
    assertThat(box.otherPlaces()).isEqualTo(2);
    assertThat(box.least().orElseThrow().si()).isCloseTo(5 * GRAVITY * 0.8 / 0.25, within(1e-9));
    assertThat(box.greatest().orElseThrow().si())
        .isCloseTo((260 * 1.6 + 8 * GRAVITY * 0.8) / 0.25, within(1e-9));
  }

  @Test
  void aFigureThatTurnsWithinTheBoxIsSearched() {
    // 120 N at 1 m, held by a pull at 0.5 m: 120 / (0.5 · sin of its angle), least when upright
    Device lever =
        Device.named("trough lid lever")
            .point("hinge", 0, 0)
            .point("eye", 0.5, 0)
            .point("end", 1, 0)
            .member("lever", "hinge", "eye", "end")
            .pin("hinge", "hinge", "lever", "ground")
            .force("lid", "lever", "end", Vector.of(0, -120))
            .sought("pull", "lever", "eye", Direction.ofAngle(1.5))
            .build();
    ToleranceBox box =
        ToleranceBox.of(
            Model.of(lever),
            List.of(
                Uncertain.uniform(Input.direction("pull"), 1.2, 2.1),
                Uncertain.uniform(Input.size("lid"), 110, 130)),
            Figure.parse("pull"));
    assertThat(box.how()).isEqualTo(How.BOUNDED_SEARCH);
    assertThat(box.senses()).containsExactly(Sense.BOTH, Sense.RISES);
    FigureAt least = box.least().orElseThrow();
    assertThat(least.si()).isCloseTo(220, within(1e-8));
    assertThat(least.inputs().get(0)).isCloseTo(Math.PI / 2, within(1e-5));
    assertThat(least.inputs().get(1)).isEqualTo(110);
    FigureAt greatest = box.greatest().orElseThrow();
    assertThat(greatest.si()).isCloseTo(260 / Math.sin(2.1), within(1e-9));
    assertThat(greatest.inputs()).containsExactly(2.1, 130.0);
    assertThat(box.looks()).isLessThanOrEqualTo(ToleranceBox.LOOKS);
    assertThat(box.words(UnitSystem.SI))
        .anyMatch(text -> text.startsWith("These ends were searched for with "));
  }

  @Test
  void limitsWithKinksAreLookedAtToo() {
    // the ladder holds the picker as far up as the floor's friction allows
    ToleranceBox box =
        ToleranceBox.of(
            Model.of(StudyYard.ladder()),
            List.of(
                Uncertain.uniform(Input.friction("floor"), 0.4, 0.6),
                Uncertain.within(Input.x("rung"), 0.3)),
            Figure.parse("friction factor"));
    // needed 720 · x / 4 over 720 · μ
    assertThat(box.how()).isEqualTo(How.MONOTONE);
    assertThat(box.least().orElseThrow().si()).isCloseTo(1.2 / 4 / 0.6, within(1e-9));
    assertThat(box.greatest().orElseThrow().si()).isCloseTo(1.8 / 4 / 0.4, within(1e-9));
    assertThat(box.outcomes()).extracting(Counted::what).contains("holds", "does not hold");
    assertThat(box.words(UnitSystem.SI)).anyMatch(text -> text.contains("does not hold"));
  }

  @Test
  void placesWithoutANumberAreTold() {
    Device held = StudyYard.jib();
    Input length =
        Input.of(
            "length of stay",
            Dimension.LENGTH,
            model -> 1.5,
            (model, v) -> {
              if (v > 2) {
                throw new ModelException("stay", "length", v, "2 m at most");
              }
              return Input.y("eye").put(Model.of(held), v);
            });
    ToleranceBox box =
        ToleranceBox.of(
            Model.of(held),
            List.of(Uncertain.uniform(length, 1, 2.5)),
            Figure.parse("stay.tension"));
    assertThat(box.how()).isEqualTo(How.BOUNDED_SEARCH);
    assertThat(box.missing())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.what()).contains("cannot be built: length of stay");
              assertThat(one.example().get(0)).isGreaterThan(2);
            });
    // 600 · √(2² + y²) / y falls as y rises to 2
    assertThat(box.least().orElseThrow().si()).isCloseTo(600 * Math.sqrt(2), within(1e-3));
    assertThat(box.greatest().orElseThrow().si()).isCloseTo(600 * Math.sqrt(5), within(1e-9));
    assertThat(box.words(UnitSystem.SI)).anyMatch(text -> text.contains("grow without bound"));
  }

  @Test
  void nowhereANumberIsAnAnswer() {
    ToleranceBox box =
        ToleranceBox.of(
            Model.of(StudyYard.press()),
            List.of(Uncertain.within(Input.x("ram"), 0.05)),
            Figure.parse("greatest multiple(hand)"));
    assertThat(box.how()).isEqualTo(How.NOTHING_FOUND);
    assertThat(box.least()).isEmpty();
    assertThat(box.greatest()).isEmpty();
    assertThat(box.missing()).isNotEmpty();
    assertThat(box.words(UnitSystem.SI).get(0)).contains("has no number at any of");
  }

  @Test
  void theSameBoxIsFoundAgain() {
    List<Uncertain> uncertain =
        List.of(
            Uncertain.within(Input.x("tip"), 0.1),
            Uncertain.within(Input.y("tip"), 0.1),
            Uncertain.within(Input.x("head"), 0.1));
    Model derrick = Model.of(StudyYard.derrick());
    ToleranceBox first = ToleranceBox.of(derrick, uncertain, Figure.parse("heel pin.size"));
    ToleranceBox again = ToleranceBox.of(derrick, uncertain, Figure.parse("heel pin.size"));
    assertThat(again.least()).isEqualTo(first.least());
    assertThat(again.greatest()).isEqualTo(first.greatest());
    assertThat(again.looks()).isEqualTo(first.looks());
  }

  @Test
  void noSampleIsBeyondTheBox() {
    List<Uncertain> uncertain =
        List.of(
            Uncertain.within(Input.x("tip"), 0.2),
            Uncertain.within(Input.y("tip"), 0.2),
            Uncertain.within(Input.mass("barrel"), 20),
            Uncertain.within(Input.x("head"), 0.1));
    Model derrick = Model.of(StudyYard.derrick());
    for (String ask : List.of("hand", "stay.tension", "heel pin.size", "axle pin.y on pole")) {
      Figure figure = Figure.parse(ask);
      ToleranceBox box = ToleranceBox.of(derrick, uncertain, figure);
      Sampled sampled =
          Sampling.of(derrick, uncertain, List.of(figure)).run(5000, 4).figure(figure);
      double slack = 1e-9 * box.greatest().orElseThrow().si();
      assertThat(sampled.least().orElseThrow().si())
          .as(ask)
          .isGreaterThanOrEqualTo(box.least().orElseThrow().si() - slack);
      assertThat(sampled.greatest().orElseThrow().si())
          .as(ask)
          .isLessThanOrEqualTo(box.greatest().orElseThrow().si() + slack);
    }
  }

  @Test
  void mistakesNameTheirKey() {
    Uncertain normal = Uncertain.normal(Input.x("ram"), 0.25, 0.01);
    refused(
        () -> ToleranceBox.of(press(), List.of(normal), RAM),
        "x of ram: spread is a normal distribution; wanted: bounds");
    refused(() -> ToleranceBox.of(press(), List.of(), RAM), "at least one");
    Uncertain arm = Uncertain.within(Input.x("ram"), 0.05);
    refused(() -> ToleranceBox.of(press(), List.of(arm), RAM, 99), "looks");
    refused(
        () -> ToleranceBox.of(press(), List.of(Uncertain.within(Input.friction("heel"), 0.1)), RAM),
        "heel");
    refused(() -> Uncertain.uniform(Input.x("ram"), 0.3, 0.2), "x of ram");
    refused(() -> Uncertain.within(Input.x("ram"), 0), "x of ram");
    Uncertain tiny = Uncertain.within(Input.x("ram"), 1e-20);
    refused(() -> ToleranceBox.of(press(), List.of(tiny), RAM), "x of ram: spread is 0.25 to 0.25");
    Uncertain huge = Uncertain.uniform(Input.x("ram"), -1e308, 1e308);
    refused(() -> ToleranceBox.of(press(), List.of(huge), RAM), "x of ram: spread");
    Uncertain reach = Uncertain.within(Input.distance("ram", "hinge"), 0.05);
    refused(() -> ToleranceBox.of(press(), List.of(reach, arm), RAM), "distance of ram from hinge");
  }

  private static void refused(Runnable mistake, String word) {
    assertThatThrownBy(mistake::run).isInstanceOf(ModelException.class).hasMessageContaining(word);
  }
}
