package bellcrank.statics.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round values for an axis: multiples of 1, 2 or 5 times a power of ten. */
final class RoundTicks {

  /** At most so many steps fit between the ends. */
  private static final int MOST = 5;

  /** Share of the range by which a tick may lie beyond an end. */
  private static final double SLACK = 1e-9;

  private RoundTicks() {}

  /** All between two ends, the first below the second, with the decimals that they need. */
  static List<BigDecimal> between(double low, double high) {
    double least = (high - low) / MOST;
    int power = (int) Math.floor(Math.log10(least));
    double times = least / Math.pow(10, power);
    int leading = times <= 1 ? 1 : times <= 2 ? 2 : times <= 5 ? 5 : 10;
    BigDecimal step = new BigDecimal(leading).scaleByPowerOfTen(power);
    BigDecimal from = new BigDecimal(low - SLACK * (high - low));
    BigDecimal to = new BigDecimal(high + SLACK * (high - low));
    BigDecimal tick = from.divide(step, 0, RoundingMode.CEILING).multiply(step);
    List<BigDecimal> ticks = new ArrayList<>();
    for (; tick.compareTo(to) <= 0; tick = tick.add(step)) {
      ticks.add(tick.stripTrailingZeros());
    }
    return ticks;
  }
}
