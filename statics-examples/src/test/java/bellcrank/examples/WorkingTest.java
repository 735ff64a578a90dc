package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The option that shows how answers are worked out by hand. */
final class WorkingTest {

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
      """;

  @TempDir private Path folder;

  private String lever = "";

  @BeforeEach
  void writeFile() throws IOException {
    lever = Files.writeString(folder.resolve("lever.yaml"), STAYED_LEVER).toString();
  }

  @Test
  void theWorkingOfEachCaseStandsBehindTheAnswers() {
    CommandRun run = CommandRun.of("--working", "full", lever);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("Worked by hand, case calm\n\nSymbols\n")
        .contains("   1 m · F_stay − 1 m · 100 N = 0\n   F_stay = 100 N (it pulls)\n")
        .contains("Worked by hand, case storm\n")
        .contains("   F_stay = 300 N (it pulls)\n");
    assertThat(run.out().lines().filter(line -> !line.startsWith("   ")))
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void onlyWhatIsAskedIsWorkedOut() {
    CommandRun run =
        CommandRun.of("--working", "outline", "--case", "calm", "--ask", "stay.tension", lever);
    assertThat(run.out())
        .contains("1. Cut lever free. Moments about a: F_stay = 100 N (it pulls).")
        .doesNotContain("2. Cut");
    CommandRun answers = CommandRun.of("--working", "answer", "--case", "calm", lever);
    assertThat(answers.out()).contains("Answers\n  hinge.x: 0 N\n").doesNotContain("Cut lever");
  }

  @Test
  void jsonHasTheStepsAsData() {
    CommandRun run = CommandRun.of("--json", "--working", "full", lever);
    assertThat(run.out())
        .contains("\"workedSolution\": {")
        .contains("\"kind\": \"equation\"")
        .contains("\"symbol\": \"F_stay\"")
        .contains("\"kind\": \"answer\"");
    assertThat(CommandRun.of("--json", lever).out()).doesNotContain("workedSolution");
  }

  @Test
  void whatDoesNotFitIsRefused() {
    CommandRun level = CommandRun.of("--working", "loud", lever);
    assertThat(level.status()).isEqualTo(2);
    assertThat(level.err()).contains("found \"loud\"; wanted: answer, outline or full");
    CommandRun check = CommandRun.of("--check", "--working", "full", lever);
    assertThat(check.status()).isEqualTo(2);
    assertThat(check.err()).contains("--check and --working do not go together");
  }
}
