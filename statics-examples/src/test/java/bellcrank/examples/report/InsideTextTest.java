package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.CommandRun;
import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.InternalForces;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of the forces inside members. */
final class InsideTextTest {

  private static final String BOARD =
      """
      format: 1
      device: board on trestles
      points: {A: [0, 0], M: [1, 0], L: [2, 0], B: [4, 0]}
      members: {board: {bars: [[A, B]]}}
      connections:
        A: {pin: A, joins: [board, ground]}
        B: {roller: B, joins: [board, ground], push: up}
      loads:
        apples: {spread: 30, member: board, from: L, to: B}
        twist: {couple: 40, member: board, at: M}
      """;

  @TempDir private Path folder;

  private static String text(String yaml) {
    DeviceFile file = YamlFiles.parse(yaml);
    return ReportText.of(FileAnswer.of("a", file, Optional.empty(), List.of()), file.units());
  }

  @Test
  void endsJumpsAndPeaksStandInATable() {
    // A: (60 · 1 + 40) / 4 = 25 up; M jumps by 40 at 1 m from 25; V = 0 at 2 + 25/30
    assertThat(text(BOARD))
        .contains(
            """
            Forces inside the members (N pulls, V and M as seen along the bar)
              member, bar  at (m)            N (N)   V (N)  M (N·m)
              board: A–B        0  A             0   25.00        0
                            1.000  before M      0   25.00    25.00
                            1.000  after M       0   25.00   -15.00
                            4.000  B             0  -35.00        0
            """);
  }

  @Test
  void whatIsMissingIsTold() {
    assertThat(text(BOARD.replace(", at: M}", "}")))
        .contains("  not told: twist is a couple on board whose place is not stated\n")
        .doesNotContain("member, bar");
    assertThat(text(BOARD.replace("30,", "0,").replace("40,", "0,")))
        .doesNotContain("Forces inside");
  }

  @Test
  void thePictureTellsItsPeaks() {
    DeviceFile file = YamlFiles.parse(BOARD);
    InternalForces forces = Balance.of(file.device()).internalForces("board");
    String svg = InsideChart.svg(forces, "board & twist", UnitSystem.SI);
    assertThat(svg)
        .contains("<title>board &amp; twist</title>")
        .contains("shear force of A–B: -35.00 N at 4.000 m")
        .contains("moment of A–B: 25.00 N·m at 1.000 m")
        .endsWith("</svg>\n");
    assertThat(InsideChart.isDrawable(forces)).isTrue();
  }

  @Test
  void picturesAreWrittenIntoAFolder() throws IOException {
    String board = Files.writeString(folder.resolve("board.yaml"), BOARD).toString();
    CommandRun run = CommandRun.of(board, "--inside", folder.toString());
    assertThat(run.err()).isEmpty();
    assertThat(Files.readString(folder.resolve("board.svg"))).contains("<svg ");
    Path made = folder.resolve("made").resolve("for it");
    assertThat(CommandRun.of(board, "--inside", made.toString()).err()).isEmpty();
    assertThat(made.resolve("board.svg")).exists();
    String nowhere = folder.resolve("board.yaml").resolve("none").toString();
    assertThat(CommandRun.of(board, "--inside", nowhere).err())
        .contains("cannot be written; wanted: a file in a folder that is there");
    assertThat(CommandRun.of(board, board, "--inside", nowhere).err())
        .startsWith("bellcrank: --inside takes one device file\n");
    String bare =
        Files.writeString(folder.resolve("bare.yaml"), BOARD.replace(", at: M}", "}")).toString();
    assertThat(CommandRun.of(bare, "--inside", folder.toString()).err())
        .isEqualTo(bare + ": nothing to draw: no forces inside its members are told\n");
    String cases =
        Files.writeString(folder.resolve("cases.yaml"), BOARD + "cases: {a: {}, b: {}}\n")
            .toString();
    assertThat(CommandRun.of(cases, "--inside", folder.toString()).err())
        .isEqualTo(cases + ": it has several cases; --inside wants one, named by --case\n");
    assertThat(CommandRun.of(cases, "--inside", folder.toString(), "--case", "a").err()).isEmpty();
  }
}
