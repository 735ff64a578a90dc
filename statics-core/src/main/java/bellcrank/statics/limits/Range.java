package bellcrank.statics.limits;

import bellcrank.statics.units.Dimension;
import java.util.OptionalDouble;

/**
 * Between which values an answer lies in all states that the device can be in.
 *
 * @param dimension what kind of quantity it is
 * @param least least value in SI units; empty if there is none, however far one goes
 * @param greatest greatest value in SI units; empty if there is none
 * @param gap bound in SI units on how far the true ends may lie outside; 0 where the range is exact
 *     but for rounding
 */
public record Range(
    Dimension dimension, OptionalDouble least, OptionalDouble greatest, double gap) {

  /** Share of the larger end by which ends that are the same may differ by rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * Whether statics, with all the conditions, leaves one value.
   *
   * @return true if both ends are the same to rounding
   */
  public boolean isOne() {
    if (least.isEmpty() || greatest.isEmpty()) {
      return false;
    }
    double low = least.getAsDouble();
    double high = greatest.getAsDouble();
    return high - low <= ROUNDING * Math.max(1, Math.max(Math.abs(low), Math.abs(high)));
  }
}
