package bellcrank.examples;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What must be true of every published problem and every sample device, whatever it expects; that
 * they come out as they expect is tested as a suite.
 */
final class ReferenceProblemsTest {

  /** Forces must close to this share of the largest one. */
  private static final double RESIDUAL = 1e-12;

  static Stream<Path> files() {
    return Stream.concat(YamlFiles.problems().stream(), YamlFiles.devices().stream());
  }

  @Test
  void noProblemHasGoneMissing() {
    assertThat(YamlFiles.problems()).hasSizeGreaterThanOrEqualTo(130);
    assertThat(YamlFiles.devices()).hasSizeGreaterThanOrEqualTo(12);
    long expectations =
        YamlFiles.problems().stream()
            .mapToLong(file -> YamlFiles.read(file).expectations().size())
            .sum();
    assertThat(expectations).isGreaterThanOrEqualTo(450);
  }

  @ParameterizedTest
  @MethodSource("files")
  void forcesCloseInEveryCase(Path path) {
    DeviceFile file = YamlFiles.read(path);
    for (LoadCase one : file.device().cases()) {
      Balance balance = Balance.of(file.device(), one.name());
      if (balance.outcome() instanceof Outcome.NoBalance) {
        // there are no forces; that must be what the file expects
        assertThat(file.expectations().stream().map(Expectation::value))
            .contains(new Expected.Words("no balance"));
      } else {
        assertThat(balance.residual())
            .as("residual in case " + one.name())
            .isBetween(0.0, RESIDUAL);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void aContradictedSourceIsExplained(Path path) {
    for (Expectation one : YamlFiles.read(path).expectations()) {
      assertThat(one.printed().isPresent())
          .as(one.ask().text() + ": what the source prints, and why it differs, go together")
          .isEqualTo(one.reason().isPresent());
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileNamesItsSource(Path path) {
    DeviceFile file = YamlFiles.read(path);
    for (Expectation one : file.expectations()) {
      assertThat(one.source().isPresent() || file.about().source().isPresent())
          .as(one.ask().text() + " has a source")
          .isTrue();
    }
  }
}
