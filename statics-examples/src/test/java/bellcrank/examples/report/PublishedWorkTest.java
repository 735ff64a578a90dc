package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Step;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.harness.ExpectedAnswer;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Problems that sources work by hand: the worked solution ends in the printed digits and takes no
 * more equations than the solution by hand.
 */
final class PublishedWorkTest {

  private static final String TABLE = "/worked/by-hand.txt";

  /** A row of the table. */
  record Row(String id, List<Ask> asks, int equations, String basis, String how) {

    static Row parse(String line) {
      List<String> fields = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
      assertThat(fields).as(line).hasSize(5);
      List<Ask> asks =
          Arrays.stream(fields.get(1).split(";", -1)).map(String::strip).map(Ask::parse).toList();
      return new Row(
          fields.get(0), asks, Integer.parseInt(fields.get(2)), fields.get(3), fields.get(4));
    }

    @Override
    public String toString() {
      return id;
    }

    DeviceFile file() {
      Path path =
          YamlFiles.problems().stream()
              .filter(one -> one.getFileName().toString().equals(id + ".yaml"))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no file " + id));
      return YamlFiles.read(path);
    }
  }

  static Stream<Row> rows() {
    try (InputStream table =
        Objects.requireNonNull(PublishedWorkTest.class.getResourceAsStream(TABLE))) {
      return new String(table.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(Row::parse);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void thirtyProblemsPrintTheirAnswers() {
    assertThat(rows().map(Row::id)).doesNotHaveDuplicates();
    assertThat(rows().map(Row::basis)).containsOnly("method of the source", "from memory");
    assertThat(rows().map(Row::how)).noneMatch(String::isBlank);
    assertThat(
            rows()
                .filter(row -> row.file().about().basis().filter("printed"::equals).isPresent())
                .count())
        .isGreaterThanOrEqualTo(30);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void itEndsInThePrintedDigitsWithNoMoreEquations(Row row) {
    DeviceFile file = row.file();
    WorkedSolution solution = solve(file, row.asks());
    List<Checked> checks = ExpectationCheck.all(file);
    for (int k = 0; k < row.asks().size(); k++) {
      Ask ask = row.asks().get(k);
      Checked check =
          checks.stream()
              .filter(one -> one.expectation().ask().equals(ask))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no value for " + ask.text()));
      Step.Result result = solution.results().get(k);
      ExpectedAnswer.Amount amount = (ExpectedAnswer.Amount) check.expectation().answer().value();
      Quantity wanted = amount.quantity();
      double found = ((Answer.Value) result.answer()).si();
      double turns =
          wanted.dimension() == Dimension.ANGLE
              ? 2 * Math.PI * Math.round((found - wanted.si()) / (2 * Math.PI))
              : 0;
      double room = amount.withRoom(check.allowed());
      assertThat(found - turns).as(ask.text()).isCloseTo(wanted.si(), within(room));
    }
    assertThat(solution.equations().size())
        .as(row.how())
        .isPositive()
        .isLessThanOrEqualTo(row.equations());
  }

  private static WorkedSolution solve(DeviceFile file, List<Ask> asks) {
    if (asks.get(0).subject() instanceof Subject.Extreme extreme) {
      List<Ask> inside = asks.stream().skip(1).map(PublishedWorkTest::withoutEnd).toList();
      String sought = ((Subject.Part) extreme.of().subject()).name();
      return WorkedSolution.atLimit(Limits.of(file.device()), sought, extreme.greatest(), inside)
          .orElseThrow();
    }
    return Limits.concern(file.device())
        ? WorkedSolution.of(Limits.of(file.device()), asks)
        : WorkedSolution.of(Balance.of(file.device()), asks);
  }

  /** What is told of a state: not the end of a range, but the value itself. */
  private static Ask withoutEnd(Ask ask) {
    return ask.subject() instanceof Subject.Extreme extreme ? extreme.of() : ask;
  }
}
