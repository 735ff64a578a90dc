package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Limits as JSON, in SI units. */
final class LimitsJsonTest {

  private static Object limits(DeviceFile file) {
    FileAnswer answer = FileAnswer.of("test.yaml", file, Optional.empty(), List.of());
    Object tree = JsonTree.parse(ReportJson.of(List.of(answer), List.of()));
    return at(tree, "files", 0, "answers", 0, "limits");
  }

  /** What stands below names and indices. */
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

  @Test
  void aDeviceThatBalanceDecidesHasNone() {
    assertThat(limits(YamlFiles.read(YamlFiles.device("cider-press-lever"))))
        .isSameAs(JsonTree.NULL);
  }

  @Test
  void aBlockPulledTooHard() {
    // 60 N on 100 N with μ = 0.5
    Object limits =
        limits(
            YamlFiles.parse(
                """
                format: 1
                device: block
                points: {b: [0, 0]}
                joints: [b]
                connections: {floor: {contact: b, joins: [b, ground], push: up, friction: 0.5}}
                loads:
                  block: {weight: 100, joint: b}
                  pull: {force: 60, direction: right, joint: b}
                """));
    assertThat(at(limits, "verdict", "kind")).isEqualTo("does not hold");
    assertThat(at(limits, "verdict", "after")).isEqualTo("loads");
    assertThat((String) at(limits, "verdict", "words"))
        .startsWith("Does not hold: floor slides right: b moves right. It would hold up to 0.8333");
    assertThat(at(limits, "verdict", "how", "events", 0, "kind")).isEqualTo("slides");
    assertThat(at(limits, "verdict", "how", "motion", "words")).isEqualTo("b moves right");
    assertThat((Double) at(limits, "frictionFactor", "factor")).isCloseTo(1.2, within(1e-9));
    assertThat(at(limits, "variations", 0, "name")).isSameAs(JsonTree.NULL);
    assertThat(at(limits, "variations", 0, "loads")).isEqualTo(List.of("pull"));
    assertThat(at(limits, "variations", 0, "greatest", "kind")).isEqualTo("gives way");
    assertThat((Double) at(limits, "variations", 0, "greatest", "value"))
        .isCloseTo(50.0 / 60, within(1e-9));
    assertThat(at(limits, "states")).isEqualTo(List.of());
  }

  @Test
  void whatHasNoBoundSaysSo() {
    Object limits =
        limits(
            YamlFiles.parse(
                """
                format: 1
                device: block between two boards
                points: {l: [-0.1, 0], r: [0.1, 0], b: [0, 0]}
                members: {block: [l, b, r]}
                connections:
                  left: {contact: l, joins: [block, ground], push: right, friction: 0.4}
                  right: {contact: r, joins: [block, ground], push: left, friction: 0.4}
                loads: {w: {weight: 100, member: block, at: b}}
                limits: {heavier: {vary: w}}
                """));
    assertThat(at(limits, "verdict", "kind")).isEqualTo("can hold once seated");
    assertThat(at(limits, "verdict", "parts")).isEqualTo(List.of("left", "right"));
    assertThat(at(limits, "variations", 0, "greatest", "kind")).isEqualTo("self-locking");
    assertThat(at(limits, "variations", 0, "greatest", "value")).isSameAs(JsonTree.NULL);
    assertThat((Double) at(limits, "states", 0, "least")).isCloseTo(125, within(1e-9));
    assertThat(at(limits, "states", 0, "greatest", "unanswered")).isEqualTo("unlimited");
    assertThat(at(limits, "ranges", 0, "ask")).isEqualTo("left.normal");
    assertThat((Double) at(limits, "ranges", 0, "assumed")).isCloseTo(125, within(1e-9));
  }

  @Test
  void rangeOfAnEffort() {
    Object limits = limits(YamlFiles.read(YamlFiles.device("press-wedge")));
    assertThat(at(limits, "efforts", 0, "name")).isEqualTo("blow");
    // 2000 × (tan(8° ± 14.036°) ± 0.25)
    assertThat((Double) at(limits, "efforts", 0, "least")).isCloseTo(-711.488, within(1e-3));
    assertThat((Double) at(limits, "efforts", 0, "greatest")).isCloseTo(1309.524, within(1e-3));
    assertThat(at(limits, "efforts", 0, "above", "events", 0, "words")).isEqualTo("slides right");
    assertThat(at(limits, "frictionFactor", "kind")).isEqualTo("not needed");
  }

  @Test
  void baseOnGround() {
    Object base = at(limits(YamlFiles.read(YamlFiles.device("post-jack"))), "ground", 0);
    // 100 kPa × 0.3 × (0.3 − 2 × 6000 × 0.04 / 6200)
    assertThat((Double) at(base, "bears")).isCloseTo(6677.42, within(1e-2));
    assertThat((Double) at(base, "right")).isCloseTo(122_222.2, within(0.1));
    assertThat(at(base, "shape")).isEqualTo("trapezoid");
    assertThat(at(base, "isAssumed")).isEqualTo(false);
  }
}
