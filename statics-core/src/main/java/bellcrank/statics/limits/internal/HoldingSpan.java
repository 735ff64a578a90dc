package bellcrank.statics.limits.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.equilibrium.internal.Assembly;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From which to which multiple of some loads a device holds whose equations fix all forces. Forces
 * follow the multiple linearly, so two states of them say it all, and no program is needed. Serves
 * pose after pose without making anything; where conditions are not linear, {@link States} has to
 * tell.
 */
public final class HoldingSpan {

  private final Bound[] bounds;
  private double least;
  private double greatest;

  private HoldingSpan(List<Bound> bounds) {
    this.bounds = bounds.stream().filter(one -> !one.implied).toArray(Bound[]::new);
  }

  /**
   * The span of a device on ground that gives whatever is asked of it.
   *
   * @param device the device
   * @param loadCase factors of its loads
   * @return empty if a part of it has conditions of another kind
   */
  public static Optional<HoldingSpan> of(Device device, LoadCase loadCase) {
    Assembly assembly = Assembly.withDryPins(device);
    PartBounds parts = PartBounds.of(device, assembly, loadCase, FrictionLevel.STATED, Map.of());
    return parts.branches().isEmpty() && parts.sinking().isEmpty()
        ? Optional.of(new HoldingSpan(parts.bounds()))
        : Optional.empty();
  }

  /**
   * Finds the span in a pose.
   *
   * @param none forces without the loads that are multiplied, by unknowns
   * @param one forces with them, by unknowns
   * @param scale size of the loads in N, above 0
   * @return false if the device holds at no multiple
   */
  public boolean find(double[] none, double[] one, double scale) {
    least = Double.NEGATIVE_INFINITY;
    greatest = Double.POSITIVE_INFINITY;
    for (Bound bound : bounds) {
      double fixed = bound.sum(none);
      double varied = bound.sum(one) - fixed;
      double limit = (bound.limit - fixed) / scale;
      // a difference of two forces is known no better than they are
      if (Math.abs(varied) < States.ROUNDING * (scale + Math.abs(fixed))) {
        if (limit < -Simplex.MISS) {
          return false;
        }
      } else if (varied > 0) {
        greatest = Math.min(greatest, limit * scale / varied);
      } else {
        least = Math.max(least, limit * scale / varied);
      }
    }
    return least <= greatest;
  }

  /** The least multiple that was found; without bound where it can be as low as you like. */
  public double least() {
    return least;
  }

  /** The greatest multiple that was found; without bound where it can be as high as you like. */
  public double greatest() {
    return greatest;
  }
}
