package bellcrank.examples;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Compiles and runs a program that is printed on a page, as a reader who copies it would. */
final class PrintedProgram {

  private static final Pattern CLASS = Pattern.compile("public final class (\\w+)");

  private final String name;
  private final Path folder;
  private final boolean tests;

  private PrintedProgram(String name, Path folder, boolean tests) {
    this.name = name;
    this.folder = folder;
    this.tests = tests;
  }

  /** Compiles the text of one class into a folder; every warning is an error. */
  static PrintedProgram compile(String text, Path folder) throws IOException {
    Matcher declared = CLASS.matcher(text);
    if (!declared.find()) {
      throw new AssertionError("no public final class in the program");
    }
    Path source = folder.resolve(declared.group(1) + ".java");
    Files.writeString(source, text);
    StringWriter said = new StringWriter();
    PrintWriter messages = new PrintWriter(said);
    int status =
        ToolProvider.findFirst("javac")
            .orElseThrow()
            .run(
                messages,
                messages,
                "-Xlint:all,-path",
                "-Werror",
                "-proc:none",
                "-encoding",
                "UTF-8",
                "-classpath",
                classPath(),
                "-d",
                folder.toString(),
                source.toString());
    if (status != 0) {
      throw new AssertionError("the program does not compile:\n" + said);
    }
    return new PrintedProgram(declared.group(1), folder, text.contains("  @Test\n"));
  }

  /** What the tests themselves are run with, whichever way they are started. */
  private static String classPath() {
    return Stream.of("jdk.module.path", "java.class.path", "surefire.test.class.path")
        .map(key -> System.getProperty(key, ""))
        .filter(path -> !path.isEmpty())
        .collect(Collectors.joining(File.pathSeparator));
  }

  /** Runs the program and tells what it prints; of tests, how each comes out. */
  String run() throws IOException, ReflectiveOperationException {
    if (tests) {
      try (URLClassLoader loader = loader()) {
        return PrintedTests.run(loader.loadClass(name));
      }
    }
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    PrintStream before = System.out;
    try (URLClassLoader loader = loader()) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader.loadClass(name).getMethod("main", String[].class).invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  private URLClassLoader loader() throws IOException {
    return new URLClassLoader(
        new URL[] {folder.toUri().toURL()}, PrintedProgram.class.getClassLoader());
  }
}
