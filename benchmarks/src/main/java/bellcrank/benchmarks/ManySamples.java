package bellcrank.benchmarks;

import bellcrank.statics.study.Progress;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sampling;
import bellcrank.statics.units.UnitSystem;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * Draws a million samples of the derrick in one thread and in two, and prints how long it took, and
 * the processor time, which other work on the machine disturbs less.
 */
public final class ManySamples {

  private static final long SAMPLES = 1_000_000;
  private static final long SEED = 7;

  private ManySamples() {}

  /**
   * Runs and prints.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Sampling sampling = SamplingBenchmark.sampling();
    System.out.println(
        sampling.run(SAMPLES / 20, SEED).done()
            + " samples to warm up; heap of at most "
            + Runtime.getRuntime().maxMemory() / (1 << 20)
            + " MB");
    for (int threads = 1; threads <= 2; threads++) {
      long start = System.nanoTime();
      long busy = processorTime();
      Samples samples = sampling.run(SAMPLES, SEED, threads, Progress.UNWATCHED);
      double seconds = (System.nanoTime() - start) / 1e9;
      double perSample = (double) (processorTime() - busy) / samples.done();
      System.out.printf(
          Locale.ROOT,
          "%d thread(s): %d samples in %.1f s, %.0f samples/s, %.0f ns of processor a sample%n",
          threads,
          samples.done(),
          seconds,
          samples.done() / seconds,
          perSample);
      if (threads == 2) {
        samples.words(UnitSystem.SI).forEach(System.out::println);
      }
    }
  }

  /** Of all threads of this machine, in ns. */
  private static long processorTime() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }
}
