package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Some samples are answered word for word as kept. The answers of this run are left in {@code
 * target/sample-answers}, from where they are copied when a change of them is meant.
 */
final class SampleAnswersTest {

  private static final Path LEFT = Path.of("target", "sample-answers");

  /** Rounding differs a little from one kind of machine to another. */
  private static final double ROUNDING = 1e-9;

  /** By how much an estimate may change with the way of solving. */
  private static final double ESTIMATE = 10;

  private static FileAnswer answer(String sample) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(sample));
    return FileAnswer.of(sample + ".yaml", file, Optional.empty(), List.of());
  }

  private static String kept(String name, String now) throws IOException {
    Files.createDirectories(LEFT);
    Files.writeString(LEFT.resolve(name), now);
    try (InputStream in = SampleAnswersTest.class.getResourceAsStream("/sample-answers/" + name)) {
      assertThat(in).as("kept answer " + name).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String withoutResidual(String text) {
    return text.replaceAll("zero within rounding\\s+\\([^)]*\\)", "zero")
        .replaceAll("is left over\\s+\\([^)]*\\)", "is left over");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cider-press-lever",
        "bench-over-supported",
        "gate-without-brace",
        "picking-ladder",
        "stacked-crates",
        "barrel-luffing",
        "post-jack",
        "jib-side-pull",
        "barrel-derrick-rough",
        "cider-press-search",
        "cellar-beam"
      })
  void textIsAsKept(String sample) throws IOException {
    FileAnswer answer = answer(sample);
    String text = ReportText.of(answer, answer.file().units());
    assertThat(withoutResidual(text)).isEqualTo(withoutResidual(kept(sample + ".txt", text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cider-press-lever", "bench-over-supported", "gate-without-brace"})
  void jsonIsAsKept(String sample) throws IOException {
    String json = ReportJson.of(List.of(answer(sample)), List.of());
    assertSame("", JsonTree.parse(json), JsonTree.parse(kept(sample + ".json", json)));
  }

  private static void assertSame(String path, Object found, Object kept) {
    if (kept instanceof Map<?, ?> map) {
      assertThat(found).as(path).isInstanceOf(Map.class);
      assertThat(((Map<?, ?>) found).keySet()).as(path).hasToString(map.keySet().toString());
      map.forEach((key, value) -> assertSame(path + "." + key, at(found, key), value));
    } else if (kept instanceof List<?> list) {
      assertThat(found).as(path).isInstanceOf(List.class);
      assertThat((List<?>) found).as(path).hasSameSizeAs(list);
      for (int i = 0; i < list.size(); i++) {
        assertSame(path + "[" + i + "]", ((List<?>) found).get(i), list.get(i));
      }
    } else if (kept instanceof Double number) {
      assertThat(found).as(path).isInstanceOf(Double.class);
      // the condition is an estimate, of which only the size counts
      double share = path.endsWith(".condition") ? ESTIMATE : ROUNDING;
      double room = share * Math.max(1, Math.abs(number));
      assertThat((Double) found).as(path).isCloseTo(number, within(room));
    } else {
      assertThat(found).as(path).isEqualTo(kept);
    }
  }

  private static Object at(Object map, Object key) {
    Object value = ((Map<?, ?>) map).get(key);
    return value == null ? JsonTree.NULL : value;
  }
}
