package bellcrank.examples.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What became of many inputs, and how much of the processor the slowest took. */
final class Tally {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Map<String, Integer> kinds = new TreeMap<>();
  private final Map<String, Long> times = new TreeMap<>();
  private final long begin = System.nanoTime();
  private int inputs;
  private long longest;

  /**
   * Time that this thread has had of the processor, in ns; other work on the machine is not in it.
   */
  static long now() {
    return THREADS.getCurrentThreadCpuTime();
  }

  void add(String kind, long nanoseconds) {
    inputs++;
    kinds.merge(kind, 1, Integer::sum);
    times.merge(kind, nanoseconds, Long::sum);
    longest = Math.max(longest, nanoseconds);
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
    double seconds = (System.nanoTime() - begin) * 1e-9;
    text.append(
        String.format(
            Locale.ROOT,
            "%d inputs in %.0f s; the slowest took %.3f s of the processor; heap at most %d MB of %d MB%n",
            inputs,
            seconds,
            longestSeconds(),
            peak() >> 20,
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

  /** Sum of the peaks of all parts of the heap: what was used at once was no more. */
  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .mapToLong(pool -> peak(pool))
        .sum();
  }

  private static long peak(MemoryPoolMXBean pool) {
    return pool.getPeakUsage().getUsed();
  }
}
