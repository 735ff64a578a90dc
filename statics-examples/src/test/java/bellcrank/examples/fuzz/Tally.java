package bellcrank.examples.fuzz;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What became of many inputs, how long the slowest took, and how much of the heap was in use. */
final class Tally {

  private static final int TOLD = 20_000;

  private final Map<String, Integer> kinds = new TreeMap<>();
  private final Map<String, Long> times = new TreeMap<>();
  private final long begin = System.nanoTime();
  private int inputs;
  private long longest;
  private long fullest;

  void add(String kind, long nanoseconds) {
    inputs++;
    kinds.merge(kind, 1, Integer::sum);
    times.merge(kind, nanoseconds, Long::sum);
    longest = Math.max(longest, nanoseconds);
    Runtime machine = Runtime.getRuntime();
    fullest = Math.max(fullest, machine.totalMemory() - machine.freeMemory());
    if (inputs % TOLD == 0) {
      // a run that is ended by a finding does not come to its own figures
      System.out.println(inputs + " inputs so far");
    }
  }

  int of(String kind) {
    return kinds.getOrDefault(kind, 0);
  }

  /** Time of the slowest input in seconds. */
  double longestSeconds() {
    return longest * 1e-9;
  }

  String figures() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%d inputs in %.0f s; the slowest took %.3f s; heap in use at most %d MB of %d MB%n",
            inputs,
            (System.nanoTime() - begin) * 1e-9,
            longestSeconds(),
            fullest >> 20,
            Runtime.getRuntime().maxMemory() >> 20));
    kinds.forEach(
        (kind, count) ->
            text.append(
                String.format(
                    Locale.ROOT,
                    "%9d  %s, %.3f ms each%n",
                    count,
                    kind,
                    times.getOrDefault(kind, 0L) * 1e-6 / count)));
    return text.toString();
  }
}
