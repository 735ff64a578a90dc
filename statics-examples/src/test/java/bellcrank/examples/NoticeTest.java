package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.file.About;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The notice names the sources of all reference problems with their licences. */
final class NoticeTest {

  @Test
  void eachReferenceProblemHasItsSourceAndLicenceInTheNotice() throws IOException {
    Path shared = PageBlock.TOP.resolve("shared");
    List<String> rows =
        Files.readAllLines(shared.resolve("NOTICE.md")).stream()
            .filter(line -> line.startsWith("| "))
            .toList();
    List<Path> problems;
    try (Stream<Path> walk = Files.walk(shared.resolve("problems"))) {
      problems = walk.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    List<String> missing = new ArrayList<>();
    for (Path problem : problems) {
      About about = about(problem);
      String source = about.source().orElse("no source (");
      // a source is its title, then publisher and edition in brackets, then the place in it
      String title = "| " + source.substring(0, source.indexOf('(')).strip();
      String licence = about.licence().orElse("no licence");
      String topic = String.valueOf(problem.getName(problem.getNameCount() - 2));
      boolean named =
          rows.stream()
              .anyMatch(
                  row ->
                      row.startsWith(title)
                          && row.contains(licence)
                          && List.of(row.split("[|,] ?")).stream()
                              .anyMatch(cell -> cell.strip().equals(topic)));
      if (!named) {
        missing.add(problem.getFileName() + ": " + title + " | " + licence + " | " + topic);
      }
    }
    assertThat(problems).hasSizeGreaterThan(100);
    assertThat(missing).isEmpty();
  }

  private static About about(Path problem) {
    ReadResult result = DeviceFileReader.read(problem);
    assertThat(result).as(problem.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).file().about();
  }
}
