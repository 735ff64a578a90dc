package bellcrank.statics.study;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.Verdict;
import java.util.OptionalDouble;

/**
 * By how much a device does not stand, so that a search can tell near from far. A verdict alone is
 * yes or no. Where loads are applied it is the share of them that is too much, or lacking; where
 * only weights act it is the share of friction that is lacking. What neither tells is 1.
 */
final class Shortfall {

  /** A miss or room larger than this says no more. */
  private static final double MOST = 1;

  /** A miss up to this is left to the verdict. */
  private static final double ROUNDING = 1e-9;

  private final Limits limits;

  Shortfall(Model model, LoadCase loadCase) {
    limits = Limits.of(model.device(), loadCase, Pose.DRAWN, model.foundations());
  }

  /** Above 0 if it does not stand, below if it has room; empty if that was not decided. */
  OptionalDouble miss() {
    double measured = Math.max(-MOST, Math.min(MOST, measured()));
    // a verdict works out how a device gives way, which takes long and is not wanted here
    if (measured > ROUNDING) {
      return OptionalDouble.of(measured);
    }
    Verdict verdict = limits.verdict();
    if (verdict instanceof Verdict.NotDecided) {
      return OptionalDouble.empty();
    }
    if (verdict instanceof Verdict.Holds) {
      return OptionalDouble.of(Math.min(0, measured));
    }
    boolean close = verdict instanceof Verdict.Impending;
    return OptionalDouble.of(close ? 0 : measured > 0 ? measured : MOST);
  }

  private double measured() {
    Device device = limits.device();
    Variation.Multiple applied = Variation.ofAppliedLoads();
    return applied.varied(device).isEmpty() ? friction() : loads(limits.limit(applied));
  }

  private static double loads(Limit limit) {
    if (!(limit instanceof Limit.Between between)) {
      // a limit that was not decided is left to the verdict
      return limit instanceof Limit.Never ? MOST : -MOST;
    }
    double miss = -MOST;
    if (between.greatest() instanceof Limit.End.At at) {
      miss = Math.max(miss, 1 - at.value());
    }
    if (between.least() instanceof Limit.End.At at) {
      miss = Math.max(miss, at.value() - 1);
    }
    return miss;
  }

  private double friction() {
    FrictionFactor factor = limits.frictionFactor();
    return factor instanceof FrictionFactor.Least least ? least.factor() - 1 : -MOST;
  }
}
