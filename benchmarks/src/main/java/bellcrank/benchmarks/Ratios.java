package bellcrank.benchmarks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks side by side in one go and prints a Markdown table of ratios: the time of
 * each way divided by the library's own, and the bytes allocated for each solve. Times are those of
 * the middle iteration, which a short disturbance of the machine does not move.
 */
public final class Ratios {

  private static final List<String> OWN = List.of("balance", "prepared", "limit", "sweep");
  private static final String ALLOCATED = "gc.alloc.rate.norm";

  private Ratios() {}

  /**
   * Runs and prints.
   *
   * @param args options of the benchmark harness: forks, iterations, times, a pattern of names
   * @throws RunnerException if a benchmark fails
   * @throws CommandLineOptionException if an option is not known
   */
  public static void main(String[] args) throws RunnerException, CommandLineOptionException {
    Options options =
        new OptionsBuilder()
            .parent(new CommandLineOptions(args))
            .addProfiler(GCProfiler.class)
            .shouldFailOnError(true)
            .build();
    table(new Runner(options).run()).forEach(System.out::println);
  }

  /** Lines of the table, one for each benchmark and device. */
  static List<String> table(Collection<RunResult> results) {
    Map<String, List<RunResult>> rows = new TreeMap<>();
    for (RunResult result : results) {
      rows.computeIfAbsent(row(result.getParams()), key -> new ArrayList<>()).add(result);
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "| Measured | way | time / own time | middle, ns | least, ns | most, ns | bytes a solve |");
    lines.add("|---|---|---:|---:|---:|---:|---:|");
    rows.forEach(
        (row, ways) -> {
          double own = ways.stream().filter(Ratios::isOwn).mapToDouble(Ratios::time).sum();
          for (RunResult way : ways) {
            lines.add(line(row, way, own));
          }
        });
    return lines;
  }

  private static String line(String row, RunResult way, double own) {
    Result<?> bytes = way.getSecondaryResults().get(ALLOCATED);
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %.0f | %.0f | %.0f | %s |",
        row,
        method(way.getParams()),
        own > 0 ? String.format(Locale.ROOT, "%.2f", time(way) / own) : "–",
        time(way),
        way.getPrimaryResult().getStatistics().getMin(),
        way.getPrimaryResult().getStatistics().getMax(),
        bytes == null ? "–" : String.format(Locale.ROOT, "%.0f", bytes.getScore()));
  }

  private static double time(RunResult result) {
    return result.getPrimaryResult().getStatistics().getPercentile(50);
  }

  private static boolean isOwn(RunResult result) {
    return OWN.contains(method(result.getParams()));
  }

  private static String method(BenchmarkParams params) {
    String name = params.getBenchmark();
    return name.substring(name.lastIndexOf('.') + 1);
  }

  /** Benchmark class and parameters, without the method: what stands side by side. */
  private static String row(BenchmarkParams params) {
    String[] parts = params.getBenchmark().split("\\.", -1);
    StringBuilder row = new StringBuilder(parts[parts.length - 2].replace("Benchmark", ""));
    for (String key : params.getParamsKeys()) {
      row.append(", ").append(params.getParam(key).toLowerCase(Locale.ROOT).replace('_', ' '));
    }
    return row.toString();
  }
}
