package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawings as the command line writes them. */
final class DrawingFilesTest {

  private static final String DERRICK = YamlFiles.device("barrel-derrick").toString();

  @TempDir private Path folder;

  private List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theDeviceItsBodiesAndTheirPolygonsAreDrawn() throws IOException {
    Path into = folder.resolve("new").resolve("pictures");
    CommandRun run = CommandRun.of(DERRICK, "--draw", into.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(names(into))
        .containsExactly(
            "barrel-derrick-body-jib-polygon.svg",
            "barrel-derrick-body-jib.svg",
            "barrel-derrick-body-pole-polygon.svg",
            "barrel-derrick-body-pole.svg",
            "barrel-derrick-body-winch-polygon.svg",
            "barrel-derrick-body-winch.svg",
            "barrel-derrick-device.svg",
            "barrel-derrick-whole-polygon.svg",
            "barrel-derrick-whole.svg");
    for (String name : names(into)) {
      assertThat(run.out()).contains("drawn: " + into.resolve(name) + "\n");
    }
    assertThat(Files.readString(into.resolve("barrel-derrick-body-jib.svg")))
        .contains(">572.0 N<", "data-force=\"rope\"");
  }

  @Test
  void ownDrawingsAreDrawnAnewAndOtherFilesAreLeft() throws IOException {
    assertThat(CommandRun.of(DERRICK, "--draw", folder.toString()).status()).isZero();
    String drawn = Files.readString(folder.resolve("barrel-derrick-whole.svg"));
    CommandRun again = CommandRun.of(DERRICK, "--units", "us", "--draw", folder.toString());
    assertThat(again.status()).isZero();
    assertThat(Files.readString(folder.resolve("barrel-derrick-whole.svg")))
        .isNotEqualTo(drawn)
        .contains("lbf");
    Path foreign = Files.writeString(folder.resolve("barrel-derrick-body-jib.svg"), "<svg/>");
    Files.delete(folder.resolve("barrel-derrick-device.svg"));
    CommandRun refused = CommandRun.of(DERRICK, "--draw", folder.toString());
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err())
        .isEqualTo(
            foreign
                + ": this is no drawing of this program and is left as it is;"
                + " wanted: a place that is free\n");
    assertThat(refused.out()).doesNotContain("drawn:");
    assertThat(Files.readString(foreign)).isEqualTo("<svg/>");
    assertThat(folder.resolve("barrel-derrick-device.svg")).doesNotExist();
  }

  @Test
  void theTravelIsDrawnIntoTheDevice() throws IOException {
    String luffing = YamlFiles.device("barrel-luffing").toString();
    CommandRun run = CommandRun.of(luffing, "--draw", folder.toString());
    assertThat(run.err()).isEmpty();
    String device = Files.readString(folder.resolve("barrel-luffing-device.svg"));
    // five poses of a jib of one bar, and the path of its tip
    assertThat(device.split("class=\"ghost\"", -1)).hasSize(1 + 5);
    assertThat(device.split("class=\"path-of\"", -1)).hasSize(1 + 1);
    String derrick = CommandRun.of(DERRICK, "--draw", folder.toString()).out();
    assertThat(derrick).contains("drawn: ");
    assertThat(Files.readString(folder.resolve("barrel-derrick-device.svg")))
        .doesNotContain("class=\"ghost\"");
  }

  @Test
  void whatIsUsedIsDrawnForAFileWithSizes() throws IOException {
    String sized = YamlFiles.device("barrel-derrick-sized").toString();
    CommandRun run = CommandRun.of(sized, "--draw", folder.toString());
    assertThat(run.err()).isEmpty();
    String bars = Files.readString(folder.resolve("barrel-derrick-sized-capacity.svg"));
    // the rope gives first, at 2.376 times the barrel, where the jib is lowest
    assertThat(bars)
        .contains("data-part=\"rope\" data-check=\"working load limit\"")
        .contains("gives at 2.376 times the load")
        .contains("not checked: winch");
    assertThat(bars.indexOf("data-part=\"rope\"")).isLessThan(bars.indexOf("data-part=\"jib\""));
    assertThat(CommandRun.of(DERRICK, "--draw", folder.toString()).out())
        .doesNotContain("capacity");
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "text");
    CommandRun run = CommandRun.of(DERRICK, "--draw", file.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).isEqualTo(file + ": cannot be written; wanted: a folder for drawings\n");
  }

  @Test
  void jsonStaysJson() {
    CommandRun run = CommandRun.of(DERRICK, "--json", "--draw", folder.toString());
    assertThat(run.status()).isZero();
    assertThat(run.out()).doesNotContain("drawn:");
  }

  @Test
  void eachCaseHasItsOwnAndNamesNeverMeet() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("two.yaml"),
            """
            format: 1
            device: two
            points: {a: [0, 0], b: [1, 0]}
            members: {"a/b": [a, b], "A B": [a, b]}
            connections:
              wall: {clamp: a, joins: ["a/b", ground]}
              other wall: {clamp: b, joins: ["A B", ground]}
            loads: {push: {force: 5, direction: down, member: "a/b", at: b}}
            cases: {calm: {factors: {push: 1}}, gale: {factors: {push: 3}}}
            """);
    Path into = folder.resolve("out");
    CommandRun run = CommandRun.of(file.toString(), "--draw", into.toString());
    assertThat(run.err()).isEmpty();
    assertThat(names(into))
        .contains(
            "two-calm-body-a-b.svg",
            "two-calm-body-A-B-2.svg",
            "two-gale-body-a-b.svg",
            "two-gale-whole-polygon.svg")
        .hasSize(13);
  }
}
