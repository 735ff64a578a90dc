package bellcrank.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * How a program ended and all that it wrote.
 *
 * @param status zero if all was well
 * @param output both what it told and what it complained of
 */
record Run(int status, String output) {

  /** Runs a tool of the JDK in this process. */
  static Run tool(String name, String... arguments) {
    StringWriter written = new StringWriter();
    PrintWriter out = new PrintWriter(written, true);
    int status = ToolProvider.findFirst(name).orElseThrow().run(out, out, arguments);
    return new Run(status, written.toString());
  }

  /** Compiles all sources of a folder with all warnings as errors. */
  static Run compile(Path sources, Path classes, String... paths) throws IOException {
    List<String> arguments = new ArrayList<>();
    // the library's own advice: names from jar files are for those who know what they do
    arguments.add("-Xlint:all,-requires-automatic");
    arguments.addAll(List.of("-Werror", "--release", "17", "-d", classes.toString()));
    arguments.addAll(List.of(paths));
    try (Stream<Path> walk = Files.walk(sources)) {
      walk.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(arguments::add);
    }
    return tool("javac", arguments.toArray(new String[0]));
  }

  /** Runs the java of this JDK in a process of its own. */
  static Run java(String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home", ""), "bin", "java").toString());
    command.addAll(List.of(arguments));
    return program(command);
  }

  /** Runs any program. */
  static Run program(List<String> command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      return new Run(process.waitFor(), output);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException();
    }
  }

  /** What it wrote, if all was well. */
  String told() {
    assertThat(status).as(output).isZero();
    return output;
  }

  /** What it complained of; that it did is demanded. */
  String refused() {
    assertThat(status).as("went through: " + output).isNotZero();
    return output;
  }
}
