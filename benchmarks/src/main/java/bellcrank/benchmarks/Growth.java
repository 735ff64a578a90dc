package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
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
    int count = SIZES.size();
    List<Device> devices = new ArrayList<>();
    double[] build = new double[count];
    double[] best = new double[count];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      devices.add(family.apply(SIZES.get(i)));
      build[i] = milliseconds(start);
    }
    // sizes in turn, so that a disturbance of the machine does not fall on one of them alone
    for (int run = 0; run < RUNS; run++) {
      for (int i = 0; i < count; i++) {
        long start = System.nanoTime();
        solve(devices.get(i));
        best[i] = Math.min(best[i], milliseconds(start));
      }
    }
    System.out.println();
    System.out.println(
        "| "
            + name
            + " | build, ms | solve, ms | µs a member | κ | residual | allocated in a solve, MB |");
    System.out.println("|---|---:|---:|---:|---:|---:|---:|");
    for (int i = 0; i < count; i++) {
      row(SIZES.get(i), devices.get(i), build[i], best[i]);
    }
    System.gc();
    System.out.printf(
        Locale.ROOT,
        "%nThe heap with these %d devices: %.0f MB.%n",
        devices.size(),
        ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6);
    System.out.printf(
        Locale.ROOT, "%nTime grows as members to the power %.3f.%n", exponent(SIZES, best));
  }

  private static void row(int members, Device device, double build, double best) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    Balance balance = solve(device);
    long allocated = THREADS.getCurrentThreadAllocatedBytes() - before;
    System.out.printf(
        Locale.ROOT,
        "| %,d | %.1f | %.2f | %.3f | %.1e | %.1e | %.0f |%n",
        members,
        build,
        best,
        1e3 * best / members,
        balance.condition(),
        balance.residual(),
        allocated / 1e6);
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
