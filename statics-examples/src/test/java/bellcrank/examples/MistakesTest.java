package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is wrong with the command line or a file, it is told in a sentence. */
final class MistakesTest {

  private static final String HINT = "bellcrank --help tells how it is used.\n";

  private static final String LEVER =
      """
      format: 1
      device: lever
      points: {a: [0, 0], b: [1, 0]}
      members: {lever: [a, b]}
      connections: {hinge: {pin: a, joins: [lever, ground]}}
      loads: {basket: {force: 100, direction: down, member: lever, at: b}}
      seek: {hand: {want: couple, member: lever}}
      cases: {calm: {factors: {basket: 1}}, storm: {factors: {basket: 2}}}
      """;

  @TempDir private Path folder;

  private String lever = "";

  @BeforeEach
  void writeLever() throws IOException {
    lever = Files.writeString(folder.resolve("lever.yaml"), LEVER).toString();
  }

  private static void assertMisused(CommandRun run, String message) {
    assertThat(run).isEqualTo(new CommandRun(2, "", "bellcrank: " + message + "\n" + HINT));
  }

  private static void assertRefused(CommandRun run, String message) {
    assertThat(run).isEqualTo(new CommandRun(2, "", message + "\n"));
  }

  @Test
  void noFile() {
    assertMisused(CommandRun.of(), "Missing required parameter: 'FILE'");
  }

  @Test
  void anUnknownOption() {
    assertMisused(CommandRun.of("--jsn", lever), "Unknown option: '--jsn'\nThe nearest is: --json");
  }

  @Test
  void anOptionWithoutItsValue() {
    assertMisused(
        CommandRun.of(lever, "--case"), "Missing required parameter for option '--case' (NAME)");
  }

  @Test
  void anOptionGivenTwice() {
    assertMisused(
        CommandRun.of(lever, "--case", "calm", "--case", "storm"),
        "option '--case' (NAME) should be specified only once");
  }

  @Test
  void unknownUnits() {
    assertMisused(
        CommandRun.of("--units", "metric", lever),
        "Invalid value for option '--units': found \"metric\"; wanted: si or us");
  }

  @Test
  void optionsThatDoNotGoTogether() {
    assertMisused(
        CommandRun.of("--json", "--check", lever),
        "--check and --json do not go together: --json tells what holds as well");
    assertMisused(
        CommandRun.of("--check", "--ask", "hinge.x", lever),
        "--check and --ask do not go together: --check answers no asks");
    assertMisused(
        CommandRun.of("--json", "--units", "us", lever),
        "--json and --units do not go together: --json is in SI units");
  }

  @Test
  void aTextThatIsNoAsk() {
    CommandRun run = CommandRun.of("--ask", "hinge.x on", lever);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("bellcrank: --ask \"hinge.x on\": found \"on\"; wanted: ")
        .endsWith("\n" + HINT);
    assertThat(CommandRun.of("--ask", " ", lever).err())
        .startsWith(
            "bellcrank: --ask \" \": found nothing; wanted: an ask such as heel.x on lever");
  }

  @Test
  void everyTextThatIsNoAskIsTold() {
    assertThat(CommandRun.of("--ask", "hinge.q", "--ask", "x.", lever).err().lines())
        .satisfiesExactly(
            one ->
                assertThat(one).startsWith("bellcrank: --ask \"hinge.q\": found \"q\"; wanted: "),
            one -> assertThat(one).startsWith("bellcrank: --ask \"x.\": found nothing; wanted: "),
            one -> assertThat(one + "\n").isEqualTo(HINT));
  }

  @Test
  void anAskOfWhatTheDeviceDoesNotHave() {
    CommandRun run = CommandRun.of("--ask", "hinje.x", lever);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith(lever + ": --ask \"hinje.x\": found \"hinje\"; wanted: ")
        .contains("hinge");
    assertThat(CommandRun.of("--ask", "hinje.x in strom", lever).err().lines())
        .hasSize(2)
        .allMatch(line -> line.startsWith(lever + ": --ask \"hinje.x in strom\": found "));
  }

  @Test
  void anAskInAnotherCaseThanTheOneShown() {
    assertRefused(
        CommandRun.of("--case", "calm", "--ask", "hinge.x in storm", lever),
        lever
            + ": --ask \"hinge.x in storm\": found \"storm\"; wanted: the case that is shown, or"
            + " none");
  }

  @Test
  void anUnknownCase() {
    assertRefused(
        CommandRun.of("--case", "strom", lever),
        lever + ": --case: found \"strom\"; wanted: the name of a case; the nearest is \"storm\"");
  }

  @Test
  void aMissingFile() {
    String missing = folder.resolve("missing.yaml").toString();
    assertRefused(
        CommandRun.of(missing), missing + ": there is no such file; wanted: a device file");
  }

  @Test
  void aFolder() {
    assertRefused(
        CommandRun.of(folder.toString()), folder + ": this is a folder; wanted: a device file");
  }

  @Test
  void aNameThatIsNoPath() {
    assertRefused(
        CommandRun.of("a\0b"), "a\0b: this is no path; wanted: the path of a device file");
  }

  @Test
  void aNameThatTheSystemRefuses() {
    String name = "x".repeat(5000);
    assertRefused(
        CommandRun.of(name), name + ": this file cannot be read; wanted: a readable device file");
  }

  @Test
  void aNameWithAnAtSignIsAName() {
    assertRefused(
        CommandRun.of("@missing"), "@missing: there is no such file; wanted: a device file");
  }

  @Test
  void aFileWithMistakesIsToldAllOfThemByItsPath() throws IOException {
    String bad =
        Files.writeString(
                folder.resolve("bad.yaml"),
                LEVER.replace("joins: [lever,", "joins: [lver,").replace("at: b}", "at: q}"))
            .toString();
    CommandRun run = CommandRun.of(bad);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(2).allMatch(line -> line.startsWith(bad + ":"));
    assertThat(run.err()).contains(":5:", "\"lver\"", ":6:", "\"q\"");
  }

  @Test
  void theOtherFilesAreAnsweredAllTheSame() {
    String missing = folder.resolve("missing.yaml").toString();
    CommandRun run = CommandRun.of(missing, lever);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).startsWith("lever\n=====\n");
    assertThat(run.err()).isEqualTo(missing + ": there is no such file; wanted: a device file\n");
  }

  @Test
  void jsonHoldsTheMistakesToo() {
    CommandRun run = CommandRun.of("--json", "no such file");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out())
        .contains("\"sentence\": \"no such file: there is no such file; wanted: a device file\"");
  }
}
