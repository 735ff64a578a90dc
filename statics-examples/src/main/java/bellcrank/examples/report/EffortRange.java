package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sought quantity at whose every value within a range the device can hold.
 *
 * @param sought the quantity
 * @param range its range
 * @param below how the device gives way below the least value; empty if there is none
 * @param above how it gives way above the greatest value; empty if there is none
 */
record EffortRange(
    Sought sought, Range range, Optional<GivingWay> below, Optional<GivingWay> above) {

  /** Share of the other end up to which an end is zero but for rounding. */
  private static final double ROUNDING = 1e-9;

  /** Those that have more than one value. */
  static List<EffortRange> of(Limits limits) {
    List<EffortRange> ranges = new ArrayList<>();
    for (Sought sought : limits.device().sought()) {
      if (sought.want() != Sought.Want.COMPONENTS) {
        limits
            .range(Ask.of(sought.name(), Measure.VALUE))
            .filter(range -> !range.isOne())
            .ifPresent(range -> ranges.add(of(sought, range, limits)));
      }
    }
    return List.copyOf(ranges);
  }

  private static EffortRange of(Sought sought, Range range, Limits limits) {
    return new EffortRange(
        sought,
        range,
        range.least().isPresent() ? limits.givingWay(sought.name(), false) : Optional.empty(),
        range.greatest().isPresent() ? limits.givingWay(sought.name(), true) : Optional.empty());
  }

  /** Whether the device holds without it, and with some of it either way. */
  boolean holdsWithNone() {
    double least = range.least().orElse(Double.NEGATIVE_INFINITY);
    double greatest = range.greatest().orElse(Double.POSITIVE_INFINITY);
    return least < -ROUNDING * greatest && greatest > -ROUNDING * least;
  }
}
