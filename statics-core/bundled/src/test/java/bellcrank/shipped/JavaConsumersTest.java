package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs of users, built and run with what is shipped. */
final class JavaConsumersTest {

  private static final Path CONSUMERS = Path.of("src", "test", "consumers");

  /**
   * By hand, with smooth boards: (120 × 0.75 + 720 × 1) / 3.6 = 225 N; the floor slips where the
   * boards push with 0.35 × 840 N, the picker being at x = 1.345 m, 3.497 m along the ladder.
   */
  private static final List<String> ANSWERS =
      List.of("boards 225.0 N", "climb 3.497 m", "picture true");

  @TempDir Path folder;

  static Stream<List<Path>> jars() {
    return Stream.of(Shipped.coreAndLibraries(), List.of(Shipped.BUNDLED));
  }

  @ParameterizedTest
  @MethodSource("jars")
  void aProgramOnTheClassPathIsBuiltAndAnswers(List<Path> jars) throws IOException {
    Path classes = folder.resolve("classes");
    Run.compile(CONSUMERS.resolve("ladder"), classes, "-cp", Shipped.path(jars)).told();
    String path = Shipped.path(Stream.concat(Stream.of(classes), jars.stream()).toList());
    assertThat(Run.java("-cp", path, "yard.Ladder").told().lines())
        .containsExactlyElementsOf(ANSWERS);
  }

  @ParameterizedTest
  @MethodSource("jars")
  void aProgramThatIsAModuleIsBuiltAndAnswers(List<Path> jars) throws IOException {
    Path classes = module("ladder", jars).classes();
    String path = Shipped.path(Stream.concat(Stream.of(classes), jars.stream()).toList());
    assertThat(Run.java("-p", path, "-m", "yard/yard.Ladder").told().lines())
        .containsExactlyElementsOf(ANSWERS);
  }

  @Test
  void anImageHoldsTheProgramTheLibraryAndLittleOfTheJdk() throws IOException {
    List<Path> jars = List.of(Shipped.BUNDLED);
    Path classes = module("ladder", jars).classes();
    Path image = folder.resolve("image");
    Run.tool(
            "jlink",
            "--module-path",
            Shipped.path(List.of(classes, Shipped.BUNDLED)),
            "--add-modules",
            "yard",
            "--launcher",
            "ladder=yard/yard.Ladder",
            "--strip-java-debug-attributes",
            "--no-header-files",
            "--no-man-pages",
            "--output",
            image.toString())
        .told();
    String bin = image.resolve("bin").toString();
    assertThat(Run.program(List.of(Path.of(bin, "ladder").toString())).told().lines())
        .containsExactlyElementsOf(ANSWERS);
    assertThat(
            Run.program(List.of(Path.of(bin, "java").toString(), "--list-modules")).told().lines())
        .map(line -> line.replaceFirst("@.*", ""))
        .containsExactlyInAnyOrder("bellcrank.statics", "java.base", "java.xml", "yard");
  }

  @ParameterizedTest
  @MethodSource("jars")
  void whatIsInternalCannotBeReachedByAModule(List<Path> jars) throws IOException {
    assertThat(module("intruder", jars).run().refused())
        .contains("package bellcrank.statics.equilibrium.internal is not visible")
        .contains("1 error");
  }

  private Built module(String name, List<Path> jars) throws IOException {
    Path sources = Files.createDirectories(folder.resolve("sources"));
    Files.copy(
        CONSUMERS.resolve(Path.of("module", "module-info.java")),
        sources.resolve("module-info.java"));
    Path inside = Files.createDirectory(sources.resolve("yard"));
    try (Stream<Path> files = Files.list(CONSUMERS.resolve(Path.of(name, "yard")))) {
      for (Path file : files.toList()) {
        Files.copy(file, inside.resolve(file.getFileName()));
      }
    }
    Path classes = folder.resolve("classes");
    return new Built(classes, Run.compile(sources, classes, "-p", Shipped.path(jars)));
  }

  /**
   * A module that was compiled, if it could be.
   *
   * @param folder of its classes
   * @param run how the compiler ended
   */
  private record Built(Path folder, Run run) {

    Path classes() {
      run.told();
      return folder;
    }
  }
}
