package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How the time to find a course grows with the number of links of a scissor chain, driven by its
 * lowest link.
 */
public final class CourseGrowth {

  private static final List<Integer> SIZES = List.of(250, 500, 1_000, 2_000);
  private static final int RUNS = 9;

  /** How far the lowest link turns each way, in rad. */
  static final double TURN = 0.2;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private CourseGrowth() {}

  /**
   * Measures and prints.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    List<Device> devices = new ArrayList<>();
    SIZES.forEach(links -> devices.add(MovingDevices.slidingChain(links)));
    for (int warm = 0; warm < 20; warm++) {
      follow(devices.get(1));
    }
    double[] best = new double[SIZES.size()];
    double[] allocated = new double[SIZES.size()];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    // sizes in turn, so that a disturbance of the machine does not fall on one of them alone
    for (int run = 0; run < RUNS; run++) {
      for (int i = 0; i < best.length; i++) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        long start = System.nanoTime();
        follow(devices.get(i));
        best[i] = Math.min(best[i], (System.nanoTime() - start) / 1e6);
        allocated[i] = (THREADS.getCurrentThreadAllocatedBytes() - before) / 1e6;
      }
    }
    System.out.println();
    System.out.println("| links of the chain | course, ms | µs a link | allocated, MB |");
    System.out.println("|---:|---:|---:|---:|");
    for (int i = 0; i < best.length; i++) {
      System.out.printf(
          Locale.ROOT,
          "| %,d | %.0f | %.0f | %.0f |%n",
          SIZES.get(i),
          best[i],
          1e3 * best[i] / SIZES.get(i),
          allocated[i]);
    }
    System.out.printf(
        Locale.ROOT, "%nTime grows as links to the power %.3f.%n", Growth.exponent(SIZES, best));
  }

  /** The course of a chain, both ways from the drawn pose. */
  static Course follow(Device chain) {
    if (Travel.of(chain, Drive.turn("up0"), -TURN, TURN) instanceof Course course) {
      return course;
    }
    throw new IllegalStateException(chain + " does not move");
  }
}
