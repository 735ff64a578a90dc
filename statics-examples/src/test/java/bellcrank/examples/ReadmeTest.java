package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileReader;
import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.examples.file.ReadResult;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the pages of the project print is what the code does. */
final class ReadmeTest {

  private static final List<String> PAGES =
      List.of("README.md", "DEVELOPERS.md", "shared/device-file.md");

  /** A row of the table of tolerances: name of a constant and its value. */
  private static final Pattern TOLERANCE =
      Pattern.compile("\\| `(\\w+)\\.([A-Z_]+)` \\| ([0-9.e-]+) \\|.*");

  @TestFactory
  Stream<DynamicTest> everyPrintedProgramPrintsWhatStandsBelowIt(@TempDir Path folder)
      throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (String page : PAGES) {
      List<PageBlock> blocks = PageBlock.of(page);
      for (int i = 0; i < blocks.size(); i++) {
        PageBlock program = blocks.get(i);
        if (!program.isJava()) {
          continue;
        }
        assertThat(i + 1)
            .as(program.place() + " has its output below it")
            .isLessThan(blocks.size());
        PageBlock output = blocks.get(i + 1);
        assertThat(output.language()).as(output.place()).isEqualTo("text");
        tests.add(
            DynamicTest.dynamicTest(
                program.place(),
                () ->
                    assertThat(PrintedProgram.compile(program.text(), folder).run())
                        .isEqualTo(output.text())));
      }
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(3);
    return tests.stream();
  }

  @TestFactory
  Stream<DynamicTest> everyPrintedDeviceFileIsReadAndItsExpectationsHold() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (String page : PAGES) {
      for (PageBlock block : PageBlock.of(page)) {
        if (block.isDeviceFile()) {
          tests.add(DynamicTest.dynamicTest(block.place(), () -> answer(block)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(2);
    return tests.stream();
  }

  private static void answer(PageBlock block) {
    ReadResult result = DeviceFileReader.read(block.text(), block.place());
    assertThat(result).isInstanceOf(ReadResult.Read.class);
    DeviceFile file = ((ReadResult.Read) result).file();
    Balance balance = Balance.of(file.device());
    assertThat(file.expectations()).isNotEmpty();
    for (Expectation expectation : file.expectations()) {
      Answer answer = balance.answer(expectation.ask());
      String ask = expectation.ask().text();
      assertThat(answer).as(ask).isInstanceOf(Answer.Value.class);
      assertThat(expectation.value()).as(ask).isInstanceOf(Expected.Amount.class);
      double expected = ((Expected.Amount) expectation.value()).quantity().si();
      double halfDigit = 0.5 * Math.pow(10, 1 - expectation.digits());
      assertThat(((Answer.Value) answer).si())
          .as(ask)
          .isCloseTo(expected, within(halfDigit * Math.abs(expected)));
    }
  }

  @Test
  void theFirstProgramOfTheReadmeIsTheOneInTheSources() throws IOException {
    PageBlock first =
        PageBlock.of("README.md").stream().filter(PageBlock::isJava).findFirst().orElseThrow();
    String source =
        Files.readString(
            Path.of("src", "main", "java", "bellcrank", "examples", "CiderPress.java"));
    String copied =
        source
            .replaceFirst("package [^;]*;\\s+", "")
            .replaceAll("(?s) */\\*\\*.*?\\*/\n", "")
            .replaceFirst("\n *private CiderPress\\(\\) \\{}\n\n", "");
    assertThat(first.text()).isEqualTo(copied);
  }

  @Test
  void theTableOfTolerancesHoldsTheValuesOfTheCode() throws IOException {
    Path sources = PageBlock.TOP.resolve(Path.of("statics-core", "src", "main", "java"));
    List<Path> files;
    try (Stream<Path> walk = Files.walk(sources)) {
      files = walk.filter(Files::isRegularFile).toList();
    }
    int rows = 0;
    for (String line : Files.readAllLines(PageBlock.TOP.resolve("DEVELOPERS.md"))) {
      Matcher row = TOLERANCE.matcher(line);
      if (row.matches()) {
        rows++;
        List<Path> owners =
            files.stream().filter(file -> file.endsWith(row.group(1) + ".java")).toList();
        assertThat(owners).as(row.group(1)).hasSize(1);
        assertThat(Files.readString(owners.get(0)))
            .as(row.group(1))
            .containsPattern(" " + row.group(2) + " = " + Pattern.quote(row.group(3)) + ";");
      }
    }
    assertThat(rows).isGreaterThanOrEqualTo(15);
  }
}
