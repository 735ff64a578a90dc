package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/**
 * How time and memory grow with the number of members, on a simple truss and on a scissor chain.
 * Run with a heap of 1 GB at most ({@code -Xmx1g}): the bound on memory is then that it ends at
 * all.
 */
public final class Growth {

  private static final List<Integer> SIZES = List.of(1_000, 3_000, 10_000, 30_000, 100_000);
  private static final int RUNS = 9;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private Growth() {}

  /**
   * Measures and prints.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // one more, since the number of its bars is odd
    measure("simple truss", members -> SampleDevices.simpleTruss(members + 1));
    measure("scissor chain", SampleDevices::scissorChain);
  }

  private static void measure(String name, IntFunction<Device> family) {
    for (int warm = 0; warm < 20; warm++) {
      solve(family.apply(20_000));
    }
    System.out.println();
    System.out.println(
        "| "
            + name
            + " | build, ms | solve, ms | µs a member | κ | residual | held, MB | allocated in a solve, MB |");
    System.out.println("|---|---:|---:|---:|---:|---:|---:|---:|");
    double[] times = new double[SIZES.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = row(SIZES.get(i), family);
    }
    System.out.printf(
        Locale.ROOT, "%nTime grows as members to the power %.3f.%n", exponent(SIZES, times));
  }

  private static double row(int members, IntFunction<Device> family) {
    System.gc();
    long start = System.nanoTime();
    Device device = family.apply(members);
    double build = milliseconds(start);
    double best = Double.POSITIVE_INFINITY;
    for (int run = 0; run < RUNS; run++) {
      start = System.nanoTime();
      solve(device);
      best = Math.min(best, milliseconds(start));
    }
    long before = THREADS.getCurrentThreadAllocatedBytes();
    Balance balance = solve(device);
    long allocated = THREADS.getCurrentThreadAllocatedBytes() - before;
    System.gc();
    long held = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    System.out.printf(
        Locale.ROOT,
        "| %,d | %.1f | %.2f | %.3f | %.1e | %.1e | %.0f | %.0f |%n",
        members,
        build,
        best,
        1e3 * best / members,
        balance.condition(),
        balance.residual(),
        held / 1e6,
        allocated / 1e6);
    return best;
  }

  private static Balance solve(Device device) {
    Balance balance = Balance.of(device);
    if (!balance.outcome().words().equals("in balance")) {
      throw new IllegalStateException(device + ": " + balance.outcome().words());
    }
    return balance;
  }

  private static double milliseconds(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  /**
   * Slope of the line of least squares through the logarithms.
   *
   * @param sizes numbers of members
   * @param times times, one for each size
   * @return the exponent
   */
  static double exponent(List<Integer> sizes, double[] times) {
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < times.length; i++) {
      meanX += Math.log(sizes.get(i)) / times.length;
      meanY += Math.log(times[i]) / times.length;
    }
    double above = 0;
    double below = 0;
    for (int i = 0; i < times.length; i++) {
      double x = Math.log(sizes.get(i)) - meanX;
      above += x * (Math.log(times[i]) - meanY);
      below += x * x;
    }
    return above / below;
  }
}
