package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.device.Ask;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the answers to all samples and problems. */
final class EverySampleTest {

  /** A name in back quotes. */
  private static final Pattern NAME = Pattern.compile("`([A-Za-z ]+)`");

  static Stream<Path> files() {
    return Stream.concat(YamlFiles.devices().stream(), YamlFiles.problems().stream());
  }

  /** With every ask that the device can be asked. */
  private static FileAnswer answer(DeviceFile file) {
    return FileAnswer.of("file.yaml", file, Optional.empty(), Ask.all(file.device()));
  }

  @ParameterizedTest
  @MethodSource("files")
  void noLineIsWiderThan80(Path path) {
    FileAnswer answer = answer(YamlFiles.read(path));
    for (UnitSystem units : List.of(answer.file().units(), UnitSystem.SI, UnitSystem.US)) {
      assertThat(ReportText.of(answer, units).lines())
          .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
          .allMatch(line -> line.equals(line.stripTrailing()))
          .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void jsonIsStrictAndHasOnlyNamesThatArePublished(Path path) throws IOException {
    Set<String> names = names(YamlFiles.read(path));
    assertThat(published()).containsAll(names);
  }

  @Test
  void everyPublishedNameIsInUse() throws IOException {
    Set<String> used = new TreeSet<>();
    for (Path path : YamlFiles.devices()) {
      used.addAll(names(YamlFiles.read(path)));
    }
    used.addAll(
        names(
            YamlFiles.parse(
                """
                format: 1
                device: post and slack line
                points: {foot: [0, 0], head: [0, 1], far: [1, 1]}
                members: {post: [foot, head]}
                connections:
                  foot: {pin: foot, joins: [post, ground]}
                  line: {line: [head, far], joins: [post, ground]}
                loads: {push: {force: 1, direction: right, member: post, at: head}}
                """)));
    used.addAll(
        names(
            YamlFiles.parse(
                """
                format: 1
                device: flat toggle
                points: {a: [0, 0], b: [1, 1e-10], c: [2, 0]}
                truss: [[a, b], [b, c]]
                connections:
                  a: {pin: a, joins: [a, ground]}
                  c: {pin: c, joins: [c, ground]}
                loads: {push: {force: 1, direction: down, joint: b}}
                """)));
    used.addAll(
        names(
            YamlFiles.parse(
                """
                format: 1
                device: held post
                points: {foot: [0, 0], head: [0, 1]}
                members: {post: [foot, head]}
                connections: {foot: {clamp: foot, joins: [post, ground]}}
                drive: {turn: post}
                travel: {from: 0, to: 10 deg}
                """)));
    used.addAll(names(ReportJson.of(List.of(), List.of(Refusal.of("a", "b")))));
    Set<String> titles = new TreeSet<>(firstColumn());
    titles.removeAll(used);
    assertThat(titles).isEmpty();
  }

  private static Set<String> names(DeviceFile file) {
    return names(ReportJson.of(List.of(answer(file)), List.of(), Optional.of(List.of())));
  }

  private static Set<String> names(String json) {
    Set<String> names = new TreeSet<>();
    collect(JsonTree.parse(json), names);
    return names;
  }

  private static void collect(Object tree, Set<String> names) {
    if (tree instanceof Map<?, ?> map) {
      map.forEach(
          (key, value) -> {
            names.add((String) key);
            if (!key.equals("factors")) {
              collect(value, names);
            }
          });
    } else if (tree instanceof List<?> list) {
      list.forEach(one -> collect(one, names));
    }
  }

  /** All names in back quotes on the page, and those of a missing number and of a place. */
  private static Set<String> published() throws IOException {
    Set<String> names = new TreeSet<>(Set.of("unanswered", "explanation", "x", "y"));
    Files.readAllLines(YamlFiles.jsonPage()).stream()
        .filter(line -> line.startsWith("|"))
        .forEach(line -> names.addAll(names(NAME.matcher(line))));
    return names;
  }

  /** The names in the first columns of the tables. */
  private static Set<String> firstColumn() throws IOException {
    Set<String> names = new TreeSet<>();
    Files.readAllLines(YamlFiles.jsonPage()).stream()
        .filter(line -> line.startsWith("| `"))
        .forEach(
            line -> names.addAll(names(NAME.matcher(line.substring(0, line.indexOf("|", 1))))));
    return names;
  }

  private static Set<String> names(Matcher matcher) {
    Set<String> names = new TreeSet<>();
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }
}
