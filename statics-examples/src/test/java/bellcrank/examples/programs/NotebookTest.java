package bellcrank.examples.programs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the programs draw, and how they are started. */
final class NotebookTest {

  private static final Pattern ROW =
      Pattern.compile(
          "\\| `(\\w+)` \\| .+ \\| `mvn -q compile exec:java"
              + " -Dexec\\.mainClass=bellcrank\\.examples\\.programs\\.(\\w+)` \\|");

  @TempDir private Path folder;

  @Test
  void drawingsAreDrawnAnewAndOtherFilesAreLeft() throws Exception {
    ProgramRun.of(BarrelBench::main, folder);
    ProgramRun.of(BarrelBench::main, folder).drew("free-body", "inside");
    Path foreign = Files.writeString(folder.resolve("inside.svg"), "<svg/>");
    assertThatThrownBy(() -> ProgramRun.of(BarrelBench::main, folder))
        .isInstanceOf(FileAlreadyExistsException.class)
        .hasMessage(foreign + ": this is no drawing and is left as it is; wanted: a free place");
    assertThat(Files.readString(foreign)).isEqualTo("<svg/>");
  }

  @Test
  void aFolderIsNotDrawnOver() throws IOException {
    Path inTheWay = Files.createDirectory(folder.resolve("device.svg"));
    assertThatThrownBy(() -> ProgramRun.of(WoodTongs::main, folder))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(inTheWay).isEmptyDirectory();
  }

  @Test
  void moreThanOneFolderIsRefused() {
    assertThatThrownBy(() -> OneLever.main(new String[] {"a", "b"}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("arguments: 2; wanted: one folder for the pictures, or none");
  }

  @Test
  void theReadmeNamesEachProgramAndHowItIsRun() throws Exception {
    Path top = Path.of("..");
    List<String> named =
        Files.readAllLines(top.resolve("README.md")).stream()
            .map(ROW::matcher)
            .filter(row -> row.matches() && row.group(1).equals(row.group(2)))
            .map(row -> row.group(1))
            .toList();
    Path sources = top.resolve("statics-examples/src/main/java/bellcrank/examples/programs");
    try (Stream<Path> files = Files.list(sources)) {
      assertThat(
              files
                  .filter(NotebookTest::isProgram)
                  .map(file -> file.getFileName().toString().replace(".java", "")))
          .containsExactlyInAnyOrderElementsOf(named)
          .hasSize(11);
    }
  }

  private static boolean isProgram(Path file) {
    try {
      return Files.readString(file).contains("public static void main(String[] args)");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
