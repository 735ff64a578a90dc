package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.report.Caution;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class MainTest {

  private static final String STAYED_LEVER =
      """
      format: 1
      device: stayed lever
      points: {a: [0, 0], b: [1, 0], c: [1, 1]}
      members: {lever: [a, b]}
      connections:
        hinge: {pin: a, joins: [lever, ground]}
        stay: {line: [b, c], joins: [lever, ground]}
      loads: {basket: {force: 100, direction: down, member: lever, at: b}}
      cases: {calm: {factors: {basket: 1}}, storm: {factors: {basket: 2.5}, dynamic: 1.2}}
      expect:
        stay.tension: {value: 100, digits: 3, source: by hand}
        stay.tension in storm: {value: 300, digits: 3, source: by hand}
      """;

  @TempDir private Path folder;

  private String lever = "";
  private String wrong = "";

  @BeforeEach
  void writeFiles() throws IOException {
    lever = write("lever.yaml", STAYED_LEVER);
    wrong = write("wrong.yaml", STAYED_LEVER.replace("value: 300", "value: 301"));
  }

  private String write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void anAnsweredFileEndsWithZero() {
    CommandRun run = CommandRun.of(lever);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("stayed lever\n============\n1 member, 2 connections, 1 load, 0 sought\n")
        .contains("\nCase calm\n---------\nHolds.\n")
        .contains("\nCase storm: basket × 2.5, all loads × 1.2 (dynamic)\n")
        .contains("  stay  line      100.0  pulls (tension)\n")
        .contains("  stay  line      300.0  pulls (tension)\n");
  }

  @Test
  void aFailedExpectationEndsWithOne() {
    CommandRun run = CommandRun.of(wrong);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .contains("  FAILS: stay.tension in storm = 301 N to 3 digits, found 300.00 N;")
        .contains("  holds: stay.tension = 100 N to 3 digits, found 100.00 N;");
  }

  @Test
  void tablesNeedNoFile() {
    CommandRun run = CommandRun.of("--tables");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Friction\n========\n")
        .contains("\nSoil\n====\n", "\nAnchors\n=======\n", "\nLadders\n=======\n");
    assertThat(CommandRun.of("--tables", "--units", "us").out()).contains("line 1:3: 2600 psf\n");
  }

  @Test
  void theCautionIsSaidOnceAfterAllFiles() {
    String out = CommandRun.of(lever, wrong).out();
    assertThat(out).endsWith("\n\n" + Caution.lines());
    assertThat(out.split("Caution:", -1)).hasSize(2);
  }

  @Test
  void checkSaysOneLineForEachFile() throws IOException {
    String none = write("none.yaml", STAYED_LEVER.substring(0, STAYED_LEVER.indexOf("expect:")));
    CommandRun run = CommandRun.of("--check", lever, wrong, none);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .isEqualTo(
            lever
                + ": all 2 expectations hold\n"
                + wrong
                + ": 1 of 2 expectations fails\n"
                + "  stay.tension in storm = 301 N to 3 digits, found 300.00 N\n"
                + none
                + ": nothing is expected\n");
  }

  @Test
  void checkOfOneCaseLeavesTheOthersOut() {
    CommandRun run = CommandRun.of("--check", "--case", "calm", wrong);
    assertThat(run.out()).isEqualTo(wrong + ": the expectation holds\n");
    assertThat(run.status()).isZero();
  }

  @Test
  void oneCaseIsShownAlone() {
    CommandRun run = CommandRun.of("--case", "storm", lever);
    assertThat(run.out()).contains("Case storm").doesNotContain("Case calm");
    assertThat(run.status()).isZero();
  }

  @Test
  void otherUnitsCanBeWished() {
    assertThat(CommandRun.of("--units", "us", lever).out())
        .contains("force (lbf)")
        .contains("  stay  line        22.48  pulls (tension)\n");
    assertThat(CommandRun.of("--units", "si", lever).out()).contains("force (N)");
  }

  @Test
  void furtherAsksAreAnsweredInEveryCaseTheyBelongTo() {
    CommandRun run =
        CommandRun.of("--ask", "stay.y on lever", "--ask", "resultant.line in storm", lever);
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("\nAsked\n  stay.y on lever = 100.0 N\n\n")
        .contains(
            """

            Asked
              stay.y on lever = 300.0 N
              resultant.line in storm = 300.0 N down, along the line through (1.000 m,
                0 m)
            """);
  }

  @Test
  void jsonIsPrintedAloneAndWithTheSameStatus() {
    CommandRun run = CommandRun.of("--json", wrong);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).startsWith("{\n  \"format\": 1,\n").endsWith("\n}\n");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void helpTeaches() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Usage: bellcrank ")
        .contains(
            "--case",
            "--ask",
            "--units",
            "--check",
            "--json",
            "--csv",
            "--svg",
            "--draw",
            "--inside",
            "--version")
        .contains("Exit status:")
        .endsWith(Caution.lines());
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void theExampleInTheHelpCanBeAnswered() throws IOException {
    String help = CommandRun.of("--help").out();
    String example =
        help.substring(help.indexOf("  format: 1"), help.indexOf("\nExit status:")).stripIndent();
    assertThat(example.strip().lines()).hasSize(8);
    CommandRun run = CommandRun.of(write("press.yaml", example));
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("  ram: 1408 N up on \"lever\" at \"ram\"\n");
  }

  @Test
  void theVersionIsTheProjects() throws IOException {
    CommandRun run = CommandRun.of("--version");
    assertThat(run.out()).isEqualTo("bellcrank " + Version.NUMBER + "\n");
    assertThat(run.status()).isZero();
    assertThat(Files.readString(Path.of("pom.xml"), StandardCharsets.UTF_8))
        .contains("<version>" + Version.NUMBER + "</version>");
  }

  @Test
  void theOutputIsUtf8WhateverTheConsoleIs() throws IOException {
    String file = write("ü.yaml", STAYED_LEVER.replace("device: stayed lever", "device: Bügel"));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    try {
      System.setOut(new PrintStream(bytes, true, StandardCharsets.US_ASCII));
      Main.main(new String[] {file});
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8)).startsWith("Bügel").contains("basket × 2.5");
  }

  @Test
  void aFaultOfTheProgramIsToldWithoutATrace() {
    StringWriter err = new StringWriter();
    int status = Main.failed(new IllegalStateException("odd"), new PrintWriter(err, true));
    assertThat(status).isEqualTo(2);
    assertThat(err.toString().lines())
        .containsExactly(
            "bellcrank: this is a fault of the program, please report it: "
                + "java.lang.IllegalStateException: odd");
  }
}
