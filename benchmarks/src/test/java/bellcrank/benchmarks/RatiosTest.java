package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

class RatiosTest {

  @Test
  void tableSetsTheWaysSideBySide() throws RunnerException {
    Options shortest =
        new OptionsBuilder()
            .include(OneOffBenchmark.class.getName() + ".*")
            .param("sample", "PRESS_LEVER", "TOGGLE")
            .forks(0)
            .warmupIterations(0)
            .measurementIterations(1)
            .measurementTime(TimeValue.milliseconds(5))
            .verbosity(VerboseMode.SILENT)
            .build();

    List<RunResult> results = List.copyOf(new Runner(shortest).run());
    List<String> table = Ratios.table(results);

    assertThat(table).hasSize(2 + 4);
    assertThat(table.get(0)).startsWith("| Measured | way |");
    assertThat(table.subList(2, 6))
        .anyMatch(row -> row.startsWith("| OneOff, press lever | balance | 1.00 |"))
        .anyMatch(row -> row.startsWith("| OneOff, press lever | yardstick | "))
        .anyMatch(row -> row.startsWith("| OneOff, toggle | balance | 1.00 |"))
        .anyMatch(row -> row.startsWith("| OneOff, toggle | yardstick | "));
  }
}
