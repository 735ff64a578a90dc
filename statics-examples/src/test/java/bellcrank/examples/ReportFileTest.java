package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as the command line writes it. */
final class ReportFileTest {

  private static final String PRESS = YamlFiles.device("cider-press-lever").toString();

  @TempDir private Path folder;

  @Test
  void itIsWrittenAndTold() throws IOException {
    Path file = folder.resolve("press.html");
    CommandRun run = CommandRun.of(PRESS, "--report", file.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).endsWith("report: " + file + "\n");
    HtmlText page = HtmlText.of(Files.readString(file));
    assertThat(page.texts("h1")).containsExactly("cider press lever");
  }

  @Test
  void theCommandIsInItWithoutFolders() throws IOException {
    Path file = folder.resolve("my press.html");
    CommandRun run =
        CommandRun.of(PRESS, "--report", file.toString(), "--units", "us", "--ask", "hinge.size");
    assertThat(run.status()).isZero();
    String html = Files.readString(file);
    assertThat(HtmlText.of(html).texts("pre"))
        .contains(
            "bellcrank --report 'my press.html' --ask hinge.size --units us"
                + " cider-press-lever.yaml");
    assertThat(html).doesNotContain(folder.toString(), "shared/devices").contains("lbf");
  }

  @Test
  void ownReportsAreWrittenAnewAndOtherFilesAreLeft() throws IOException {
    Path file = folder.resolve("press.html");
    assertThat(CommandRun.of(PRESS, "--report", file.toString()).status()).isZero();
    String first = Files.readString(file);
    assertThat(CommandRun.of(PRESS, "--report", file.toString(), "--units", "us").status())
        .isZero();
    assertThat(Files.readString(file)).isNotEqualTo(first);
    Files.writeString(file, "<html></html>");
    CommandRun refused = CommandRun.of(PRESS, "--report", file.toString());
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err())
        .isEqualTo(
            file
                + ": this is no report of this program and is left as it is;"
                + " wanted: a place that is free\n");
    assertThat(refused.out()).doesNotContain("report:");
    assertThat(Files.readString(file)).isEqualTo("<html></html>");
  }

  @Test
  void aPlaceThatIsNoneIsRefused() {
    Path file = folder.resolve("none").resolve("press.html");
    CommandRun run = CommandRun.of(PRESS, "--report", file.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(file + ": cannot be written; wanted: a file in a folder that is there\n");
    CommandRun taken = CommandRun.of(PRESS, "--report", folder.toString());
    assertThat(taken.err()).contains("is left as it is");
  }

  @Test
  void oneDeviceFileMakesOneReport() {
    CommandRun run = CommandRun.of(PRESS, PRESS, "--report", "x.html");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--report takes one device file");
  }

  @Test
  void jsonStaysJson() {
    Path file = folder.resolve("press.html");
    CommandRun run = CommandRun.of(PRESS, "--json", "--report", file.toString());
    assertThat(run.status()).isZero();
    assertThat(run.out()).doesNotContain("report:");
    assertThat(file).exists();
  }

  @Test
  void eachCaseHasItsChapters() throws IOException {
    Path device =
        Files.writeString(
            folder.resolve("two.yaml"),
            """
            format: 1
            device: two
            points: {a: [0, 0], b: [1, 0]}
            members: {beam: [a, b]}
            connections: {wall: {clamp: a, joins: [beam, ground]}}
            loads: {push: {force: 5, direction: down, member: beam, at: b}}
            cases: {calm: {factors: {push: 1}}, gale: {factors: {push: 3}}}
            """);
    Path file = folder.resolve("two.html");
    assertThat(CommandRun.of(device.toString(), "--report", file.toString()).status()).isZero();
    assertThat(HtmlText.of(Files.readString(file)).texts("h2"))
        .anyMatch(one -> one.endsWith("Outcome, case calm"))
        .anyMatch(one -> one.endsWith("Outcome, case gale"));
    assertThat(
            CommandRun.of(device.toString(), "--case", "gale", "--report", file.toString())
                .status())
        .isZero();
    assertThat(HtmlText.of(Files.readString(file)).texts("h2", "pre"))
        .noneMatch(one -> one.endsWith("case calm"))
        .contains("bellcrank --report two.html --case gale two.yaml");
  }
}
