package bellcrank.statics.motion.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Leads a way over a change point. There two ways cross, and nearby neither Newton's method nor the
 * free motions tell them apart; so what is asked there is interpolated from places a little off.
 */
final class Bridge {

  /** Distance of its piers, in rad or sizes of the device. */
  static final double SPAN = 4e-3;

  /** Number of piers: a polynomial of the fifth degree errs by about 1e-15 over this distance. */
  private static final int PIERS = 6;

  private final double drive;
  private final double[] piers;

  private Bridge(double drive, double[] piers) {
    this.drive = drive;
    this.piers = piers;
  }

  /**
   * A bridge over the change point next to a value of the drive; empty if there is none so near, or
   * the way is too short for piers.
   */
  static Optional<Bridge> at(List<Double> changes, double drive, double from, double to) {
    for (double change : changes) {
      if (Math.abs(drive - change) < SPAN) {
        double least = Math.min(from, to);
        double greatest = Math.max(from, to);
        List<Double> piers = new ArrayList<>();
        for (int k = 1; k <= PIERS; k++) {
          for (double pier : new double[] {change - k * SPAN, change + k * SPAN}) {
            if (pier >= least && pier <= greatest && piers.size() < PIERS) {
              piers.add(pier);
            }
          }
        }
        return piers.size() < PIERS
            ? Optional.empty()
            : Optional.of(
                new Bridge(drive, piers.stream().mapToDouble(Double::doubleValue).toArray()));
      }
    }
    return Optional.empty();
  }

  /** Numbers at the drive, from those at the piers, by Lagrange's polynomials. */
  double[] value(DoubleFunction<double[]> numbers) {
    double[] sum = new double[0];
    for (int i = 0; i < PIERS; i++) {
      double weight = 1;
      for (int j = 0; j < PIERS; j++) {
        weight *= j == i ? 1 : (drive - piers[j]) / (piers[i] - piers[j]);
      }
      double[] there = numbers.apply(piers[i]);
      sum = i == 0 ? new double[there.length] : sum;
      for (int k = 0; k < sum.length; k++) {
        sum[k] += weight * there[k];
      }
    }
    return sum;
  }
}
