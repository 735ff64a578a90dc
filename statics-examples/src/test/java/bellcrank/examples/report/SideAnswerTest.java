package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How a device stands as seen along its plane, as text and as JSON. */
final class SideAnswerTest {

  private static final Offset<Double> CLOSE = within(1e-6);

  private static FileAnswer answer(DeviceFile file) {
    return FileAnswer.of("test.yaml", file, Optional.empty(), List.of());
  }

  /** The text with each run of blanks as one. */
  private static String text(DeviceFile file) {
    return ReportText.of(answer(file), file.units()).replaceAll("\\s+", " ");
  }

  private static Object json(DeviceFile file, Object... path) {
    Object here = JsonTree.parse(ReportJson.of(List.of(answer(file)), List.of()));
    here = at(here, "files", 0);
    return at(here, path);
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

  private static Object side(DeviceFile file, Object... path) {
    return at(json(file, "answers", 0, "side"), path);
  }

  private static final DeviceFile JIB = YamlFiles.read(YamlFiles.device("jib-side-pull"));

  @Test
  void theJibIsToldInWords() {
    // moments about the right edge of the foot: 1000 × 0.4 against 200 × 0.1 + 60 × 2.0
    assertThat(text(JIB))
        .contains("Seen from the side, on \"foot\" (right is out of the drawing) sideways it holds")
        .contains(
            "all sideways effects together may be 2.86 times what is stated until foot tips about"
                + " its right edge")
        .contains("the level force of draw may be 3.17 times what is stated")
        .contains("which is 190 N to the right")
        .contains("leaning to the right on its flat base it gives way at 13.1 deg")
        .contains("on ground that falls to the right it gives way at 12.4 deg")
        .contains("the base has to be at least 0.280 m broad; it has 0.8000 m")
        .contains("swinging, gusts, soft ground and bent parts are not in it");
  }

  @Test
  void theJibIsToldInNumbers() {
    assertThat(side(JIB, "base")).isEqualTo("foot");
    assertThat((Double) side(JIB, "breadth")).isEqualTo(0.8);
    assertThat(side(JIB, "isAssumed")).isEqualTo(false);
    assertThat(side(JIB, "why")).isSameAs(JsonTree.NULL);
    assertThat(side(JIB, "tip", "verdict", "kind")).isEqualTo("holds");
    assertThat(side(JIB, "tip", "edge")).isEqualTo("right");
    assertThat(side(JIB, "tip", "slidesFirst")).isEqualTo(false);
    // 400 / 140, (400 − 20) / 2.0 and 2 × 140 / 1000
    assertThat((Double) side(JIB, "tip", "margin", "greatest", "value"))
        .isCloseTo(400.0 / 140, CLOSE);
    assertThat(side(JIB, "tip", "pulls", 0, "load")).isEqualTo("draw");
    assertThat((Double) side(JIB, "tip", "pulls", 0, "force")).isEqualTo(60);
    assertThat((Double) side(JIB, "tip", "pulls", 0, "greatestForce")).isCloseTo(190, CLOSE);
    assertThat((Double) side(JIB, "tip", "breadthNeeded")).isCloseTo(0.28, CLOSE);
  }

  @Test
  void theJibLeansAndStandsOnASlope() {
    // Leaning by a: post 700 at 0.8 m, jib 100 and barrel 200 at 2.0 m, the latter 0.1 m beside.
    double lean = (Double) side(JIB, "tip", "leans", 1, "angle");
    double overturning =
        (700 * 0.8 + 300 * 2.0) * Math.sin(lean)
            + 200 * 0.1 * Math.cos(lean)
            + 60 * (2.0 * Math.cos(lean) - 0.1 * 0);
    assertThat(overturning).isCloseTo(1000 * 0.4, within(1e-3));
    assertThat(side(JIB, "tip", "leans", 1, "edge")).isEqualTo("right");
    assertThat(side(JIB, "tip", "leans", 0, "edge")).isEqualTo("left");
    assertThat(side(JIB, "tip", "leans", 1, "kind")).isEqualTo("gives way");
    // On a slope of a the edge turns along; the moments about it are those of a turned jib.
    double slope = (Double) side(JIB, "tip", "slopes", 1, "angle");
    double turned =
        (700 * 0.8 + 300 * 2.0) * Math.sin(slope)
            + 200 * 0.1 * Math.cos(slope)
            + 60 * (2.0 * Math.cos(slope) + 0.4 * Math.sin(slope));
    assertThat(turned).isCloseTo(1000 * 0.4 * Math.cos(slope), within(1e-3));
  }

  @Test
  void whatItsFrictionIsTakenFromIsToldWithItsSource() {
    assertThat(text(JIB))
        .contains(
            "Assumptions friction of foot: 0.62, from handbook friction table, as compiled in an"
                + " open physics wiki: timber on concrete, dry (handbook). Clean laboratory"
                + " surfaces: high for design.");
    assertThat(json(JIB, "assumptions", 0, "part")).isEqualTo("foot");
    assertThat(json(JIB, "assumptions", 0, "value")).isEqualTo(0.62);
    assertThat(json(JIB, "assumptions", 0, "row")).isEqualTo("timber on concrete, dry (handbook)");
    assertThat(json(JIB, "assumptions", 0, "take")).isSameAs(JsonTree.NULL);
  }

  /** A post of 1000 N on a foot, its weight in the middle at a height of 1 m. */
  private static DeviceFile post(String friction, String load, String side) {
    return YamlFiles.parse(
        """
        format: 1
        device: post
        points: {foot: [0, 0], top: [0, 2], middle: [0, 1], far: [3, 0]}
        members: {post: {bars: [foot, top], weight: {value: 1000, at: middle}}}
        connections:
          foot: {contact base: foot, joins: [post, ground], push: up, width: 0.5, friction: %s}
        loads: {pull: {force: %s, direction: right, member: post, at: top}}
        side view: {base: foot, breadth: 1, loads: {gust: {height: 1, side: %s}}}
        """
            .formatted(friction, load, side));
  }

  @Test
  void theLowEndOfARangeIsToldAsSuch() {
    DeviceFile file =
        post("{table: \"timber on timber, dry (machine design)\", take: lowest}", "0", "1");
    assertThat(text(file))
        .contains(
            "friction of foot: 0.4, the lowest of 0.4 to 0.75, from engineering guide of a drive"
                + " maker");
    assertThat(json(file, "assumptions", 0, "take")).isEqualTo("lowest");
    DeviceFile old = post("{table: \"oak on oak along the grain, dry (old tests)\"}", "0", "1");
    assertThat(text(old)).contains("oak on oak along the grain, dry (old tests) (from memory)");
  }

  @Test
  void whatSlidesSaysSo() {
    // 300 N sideways against 0.2 × 1000; it tips at 500 only
    DeviceFile file = post("0.2", "0", "300");
    assertThat(text(file))
        .contains("sideways it does not hold: foot slides right")
        .contains("no breadth of the base would do");
    assertThat(side(file, "tip", "verdict", "kind")).isEqualTo("does not hold");
    assertThat(side(file, "tip", "slidesFirst")).isEqualTo(true);
    assertThat(side(file, "tip", "edge")).isSameAs(JsonTree.NULL);
    assertThat((Double) side(file, "tip", "pulls", 0, "greatestForce")).isCloseTo(200, CLOSE);
    assertThat(side(file, "tip", "breadthNeeded", "unanswered")).isEqualTo("not defined");
  }

  @Test
  void frictionThatThePlaneTakesIsNotThereSideways() {
    // along the plane 60 of the 0.1 × 1000 are used: √(100² − 60²) = 80 are left
    DeviceFile file = post("0.1", "60", "10");
    assertThat((Double) side(file, "tip", "pulls", 0, "greatestForce")).isCloseTo(80, CLOSE);
  }

  @Test
  void whereItDoesNotHoldInItsPlaneThereIsNothingToSee() {
    // 200 × 2 against 1000 × 0.25
    DeviceFile file = post("0.5", "200", "10");
    assertThat(text(file))
        .contains(
            "Seen from the side not told: the device does not hold in its own plane, so no forces"
                + " are known");
    assertThat(side(file, "tip")).isSameAs(JsonTree.NULL);
    assertThat((String) side(file, "why")).contains("does not hold in its own plane");
  }

  /** A bench on feet, of which statics leaves the loads open if there are three. */
  private static DeviceFile bench(String feet) {
    return YamlFiles.parse(
        """
        format: 1
        device: bench
        points: {a: [0, 0], b: [1, 0], c: [2, 0]}
        members: {bench: {bars: [a, b, c], weight: {value: 300, at: b}}}
        connections:
        %s
        side view: {base: base, breadth: 0.4, loads: {lean: {height: 0.5, side: 10}}}
        """
            .formatted(feet.indent(2).stripTrailing()));
  }

  @Test
  void whatStaticsLeavesOpenIsAssumedAndSaid() {
    // each of the two carries about 150 N, but what they rub with is open
    DeviceFile file =
        bench(
            """
            base: {contact base: a, joins: [bench, ground], push: up, width: 0.4, friction: 0.3}
            right: {contact: c, joins: [bench, ground], push: up, friction: 0.3}
            """);
    assertThat(text(file)).contains("with the least pushes and pulls (an assumption)");
    assertThat(side(file, "isAssumed")).isEqualTo(true);
    assertThat(side(file, "tip", "verdict", "kind")).isEqualTo("holds");
  }

  @Test
  void aBaseThatMayCarryNothingIsNotTold() {
    DeviceFile file =
        bench(
            """
            base: {contact base: b, joins: [bench, ground], push: up, width: 0.4, friction: 0.3}
            left: {contact: a, joins: [bench, ground], push: up, friction: 0.3}
            right: {contact: c, joins: [bench, ground], push: up, friction: 0.3}
            """);
    assertThat(text(file)).contains("not told: statics leaves open what the base carries");
  }

  @Test
  void everyCaseIsSeenForItself() {
    DeviceFile file =
        YamlFiles.parse(
            """
            format: 1
            device: post with a gust
            points: {foot: [0, 0], top: [0, 2]}
            members: {post: {bars: [foot, top]}}
            connections:
              foot: {contact base: foot, joins: [post, ground], push: up, width: 0.5, friction: 0.5}
            loads:
              tub: {weight: 100, member: post, at: top}
              cask: {spread: 100, member: post, from: foot, to: top, per: length}
            cases: {full: {}, empty: {factors: {cask: 0}}}
            side view: {base: foot, breadth: 1, offsets: {cask: 0.1}}
            """);
    // full: 200 N at 0.1 m of 300 N × 0.5 m; empty: nothing acts sideways
    assertThat((Double) at(json(file, "answers", 0, "side"), "tip", "margin", "greatest", "value"))
        .isCloseTo(7.5, CLOSE);
    assertThat(at(json(file, "answers", 1, "side"), "tip", "margin", "greatest", "kind"))
        .isEqualTo("unlimited");
  }

  @Test
  void aFileThatDoesNotAskIsNotTold() {
    DeviceFile file = YamlFiles.read(YamlFiles.device("stacked-crates"));
    assertThat(text(file)).doesNotContain("Seen from the side").doesNotContain("Assumptions");
    assertThat(json(file, "answers", 0, "side")).isSameAs(JsonTree.NULL);
    assertThat(json(file, "assumptions")).isEqualTo(List.of());
  }
}
