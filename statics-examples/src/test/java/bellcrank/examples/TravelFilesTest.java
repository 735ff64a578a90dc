package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table and the picture of a travel as the command line writes them. */
final class TravelFilesTest {

  private static final String JACK = YamlFiles.device("scissor-jack").toString();

  @TempDir private Path folder;

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private String written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void bothFilesAreWrittenBesideTheAnswer() throws IOException {
    CommandRun run = CommandRun.of(JACK, "--csv", file("a.csv"), "--svg", file("a.svg"));
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Over the travel: change in length of screw");
    assertThat(Files.readString(folder.resolve("a.csv")))
        .startsWith("change in length of screw (m),screw.tension (N),")
        .contains("\r\n0,4000,");
    assertThat(Files.readString(folder.resolve("a.svg"))).contains("<svg ");
  }

  @Test
  void theChosenUnitsAreTheirs() throws IOException {
    CommandRun.of(JACK, "--units", "us", "--csv", file("a.csv"));
    assertThat(Files.readString(folder.resolve("a.csv")))
        .startsWith("change in length of screw (ft),screw.tension (lbf),");
  }

  @Test
  void oneFileAtATime() {
    CommandRun run = CommandRun.of(JACK, JACK, "--csv", file("a.csv"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).startsWith("bellcrank: --csv and --svg take one device file\n");
  }

  @Test
  void whatCannotBeWrittenIsTold() throws IOException {
    CommandRun run = CommandRun.of(JACK, "--csv", file("none/a.csv"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            file("none/a.csv") + ": cannot be written; wanted: a file in a folder that is there\n");
    String still = YamlFiles.device("cider-press-lever").toString();
    assertThat(CommandRun.of(still, "--svg", file("a.svg")).err())
        .isEqualTo(
            still + ": no drive is stated; --csv and --svg want the keys drive and travel\n");
    assertThat(CommandRun.of(still, "--csv", file("a.csv")).err())
        .isEqualTo(
            still
                + ": no drive is stated; --csv wants the keys drive and travel, a study with"
                + " samples, or moving loads\n");
    String held =
        written(
            "held.yaml",
            """
            format: 1
            device: post
            points: {foot: [0, 0], head: [0, 1]}
            members: {post: [foot, head]}
            connections: {foot: {clamp: foot, joins: [post, ground]}}
            drive: {turn: post}
            travel: {from: 0, to: 10 deg}
            """);
    assertThat(CommandRun.of(held, "--svg", file("a.svg")).err())
        .isEqualTo(held + ": it cannot be driven so: nothing can move\n");
    String bare = written("bare.yaml", Files.readString(Path.of(held)).replace("{clamp:", "{pin:"));
    assertThat(CommandRun.of(bare, "--svg", file("a.svg")).err())
        .isEqualTo(bare + ": nothing to draw: nothing that is asked has a value on the way\n");
    String cases =
        written("cases.yaml", Files.readString(Path.of(JACK)) + "cases: {full: {}, half: {}}\n");
    assertThat(CommandRun.of(cases, "--csv", file("a.csv")).err())
        .isEqualTo(cases + ": it has several cases; --csv and --svg want one, named by --case\n");
    CommandRun one = CommandRun.of(cases, "--csv", file("a.csv"), "--case", "half");
    assertThat(one.err()).isEmpty();
    assertThat(folder.resolve("a.csv")).exists();
    assertThat(folder.resolve("a.svg")).doesNotExist();
  }
}
