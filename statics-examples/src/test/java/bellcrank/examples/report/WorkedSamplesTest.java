package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
import bellcrank.statics.explain.Step;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.limits.Limits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Samples and published problems worked out by hand come to what the balance says. */
final class WorkedSamplesTest {

  private static final Pattern KIND = Pattern.compile("\"kind\": \"([^\"]+)\"");

  static Stream<Path> files() {
    return Stream.concat(YamlFiles.problems().stream(), YamlFiles.devices().stream());
  }

  @ParameterizedTest
  @MethodSource("files")
  void numbersAreThoseOfTheBalance(Path path) {
    DeviceFile file = YamlFiles.read(path);
    for (LoadCase loadCase : file.device().cases()) {
      Balance balance = Balance.of(file.device(), loadCase.name());
      WorkedSolution solution = WorkedSolution.of(balance);
      for (Step.Result result : solution.results()) {
        Answer expected = balance.answer(result.ask());
        if (expected instanceof Answer.Value value) {
          assertThat(((Answer.Value) result.answer()).si())
              .as(result.ask().text())
              .isCloseTo(value.si(), within(1e-7 * (1 + Math.abs(value.si()))));
        } else {
          assertThat(result.answer()).as(result.ask().text()).isEqualTo(expected);
        }
      }
      SolutionWriter writer = SolutionWriter.of(Detail.FULL, file.units());
      assertThat(writer.markdown(solution).contains("### Answers"))
          .isEqualTo(!solution.results().isEmpty());
      assertThat(writer.latex(solution)).contains("\\subsection*{Solution}");
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void endsOfRangesAreThoseOfTheLimits(Path path) {
    DeviceFile file = YamlFiles.read(path);
    if (!Limits.concern(file.device())) {
      return;
    }
    for (LoadCase loadCase : file.device().cases()) {
      Limits limits = Limits.of(file.device(), loadCase.name());
      SolutionWriter writer = SolutionWriter.of(Detail.FULL, file.units());
      assertThat(writer.text(WorkedSolution.of(limits))).contains("Verdict: ");
      for (Sought sought : file.device().sought()) {
        if (sought.want() == Sought.Want.COMPONENTS) {
          continue;
        }
        for (boolean greatest : List.of(true, false)) {
          Ask value = Ask.of(sought.name());
          Ask end = greatest ? value.greatest() : value.least();
          Optional<WorkedSolution> worked =
              WorkedSolution.atLimit(limits, sought.name(), greatest, List.of());
          Answer expected = limits.answer(end);
          assertThat(worked.isPresent()).as(end.text()).isEqualTo(expected instanceof Answer.Value);
          if (worked.isPresent()) {
            Answer found = worked.get().results().get(0).answer();
            double wanted = ((Answer.Value) expected).si();
            assertThat(((Answer.Value) found).si())
                .as(end.text())
                .isCloseTo(wanted, within(1e-6 * (1 + Math.abs(wanted))));
            assertThat(worked.get().steps())
                .as(end.text())
                .noneMatch(Step.Open.class::isInstance)
                .noneMatch(Step.Taken.class::isInstance);
            assertThat(writer.text(worked.get())).contains("At the ");
          }
        }
      }
    }
  }

  @Test
  void everyKindOfStepIsOnThePage() throws IOException {
    String page = Files.readString(YamlFiles.jsonPage());
    for (Path path : YamlFiles.devices()) {
      DeviceFile file = YamlFiles.read(path);
      if (file.device().cases().size() > 1) {
        continue;
      }
      FileAnswer answer = FileAnswer.of("it", file, Optional.empty(), List.of());
      String json = ReportJson.of(List.of(answer), List.of(), Optional.of(List.of()));
      Matcher kind = KIND.matcher(json.substring(json.indexOf("\"workedSolution\"")));
      while (kind.find()) {
        assertThat(page).as(path.toString()).contains("\"" + kind.group(1) + "\"");
      }
    }
  }
}
