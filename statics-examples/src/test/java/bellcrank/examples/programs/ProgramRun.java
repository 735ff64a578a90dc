package bellcrank.examples.programs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;

/**
 * One run of a program.
 *
 * @param lines what it printed
 * @param folder where it drew
 */
record ProgramRun(List<String> lines, Path folder) {

  /** What the main method of a program is. */
  interface Program {
    void run(String... arguments) throws IOException;
  }

  /** Runs a program with a folder for its pictures. */
  static ProgramRun of(Program program, Path folder) throws IOException {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      program.run(folder.toString());
    } finally {
      System.setOut(before);
    }
    return new ProgramRun(printed.toString(StandardCharsets.UTF_8).lines().toList(), folder);
  }

  /** What stands behind the only line that begins so, after the colon. */
  String after(String start) {
    List<String> found = lines.stream().filter(line -> line.startsWith(start + ": ")).toList();
    assertThat(found).as(start + " in " + lines).hasSize(1);
    return found.get(0).substring(start.length() + 2);
  }

  /** The number behind a start, printed with its unit and perhaps words, to four digits. */
  void tells(String start, double expected, String unitAndWords) {
    isTold(start, after(start), expected, unitAndWords);
  }

  /** A number within a text, to the four digits that are printed. */
  static void isTold(String what, String text, double expected, String unitAndWords) {
    Matcher number = Pattern.compile("(-?[0-9.]+)(.*)").matcher(text);
    assertThat(number.matches()).as(what + ": " + text).isTrue();
    assertThat(number.group(2).strip()).as(what).isEqualTo(unitAndWords);
    assertThat(Double.parseDouble(number.group(1)))
        .as(what)
        .satisfies(
            found ->
                assertThat(Math.abs(found - expected))
                    .as(found + " for " + expected)
                    .isLessThanOrEqualTo(5.01e-4 * Math.abs(expected)));
  }

  /** The pictures are there, are documents, and show something. */
  void drew(String... names) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(Stream.of(names).map(n -> n + ".svg").toArray(String[]::new));
    }
    for (String name : names) {
      Path file = folder.resolve(name + ".svg");
      assertThat(lines).contains("drawn: " + file);
      Document picture =
          DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
      assertThat(picture.getDocumentElement().getTagName()).isEqualTo("svg");
      int shapes =
          Stream.of("path", "line", "polyline", "polygon", "circle")
              .mapToInt(tag -> picture.getElementsByTagName(tag).getLength())
              .sum();
      assertThat(shapes).as(name).isGreaterThan(3);
    }
  }
}
