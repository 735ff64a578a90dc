package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jetbrains.kotlin.cli.common.ExitCode;
import org.jetbrains.kotlin.cli.jvm.K2JVMCompiler;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs in Kotlin: they are built, they answer, and Kotlin knows that nothing here is null. */
final class KotlinConsumerTest {

  private static final Path CONSUMERS = Path.of("src", "test", "consumers", "kotlin");

  @TempDir Path folder;

  static Stream<List<Path>> jars() {
    return Stream.of(Shipped.coreAndLibraries(), List.of(Shipped.BUNDLED));
  }

  @ParameterizedTest
  @MethodSource("jars")
  void aProgramIsBuiltAndAnswers(List<Path> jars) throws IOException {
    compile("Press.kt", jars).told();
    List<Path> path =
        Stream.of(List.of(folder), jars, Shipped.fromClassPath("kotlin-stdlib"))
            .flatMap(List::stream)
            .toList();
    // by hand: 200 × 1.5 / 0.25
    assertThat(Run.java("-cp", Shipped.path(path), "PressKt").told().strip())
        .isEqualTo("press lever: in balance, ram 1200 N");
  }

  @ParameterizedTest
  @MethodSource("jars")
  void whatMayBeNullIsRefused(List<Path> jars) {
    assertThat(compile("Nothing.kt", jars).refused())
        .containsPattern("error: .*(type mismatch|Null|String\\?)");
  }

  private Run compile(String source, List<Path> jars) {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(written, true, StandardCharsets.UTF_8);
    ExitCode code =
        new K2JVMCompiler()
            .exec(
                out,
                "-no-reflect",
                "-no-stdlib",
                "-Werror",
                "-jvm-target",
                "17",
                "-cp",
                Shipped.path(
                    Stream.concat(jars.stream(), Shipped.fromClassPath("kotlin-stdlib").stream())
                        .toList()),
                "-d",
                folder.toString(),
                CONSUMERS.resolve(source).toString());
    return new Run(code.getCode(), written.toString(StandardCharsets.UTF_8));
  }
}
