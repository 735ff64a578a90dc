package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import java.util.List;
import java.util.Optional;

/**
 * Finds the least common factor on friction where a device locks itself. Just above that factor the
 * forces under the full loads grow without end, and a program over them no longer tells a state
 * from rounding. So the forces are kept of order one and the loads grow instead: the greatest
 * multiple of the loads is sought that forces with a given total of pushes and tensions can hold.
 * It falls to zero at the factor itself, as a function of order one.
 */
final class SelfLocking {

  /** From this many loads on, a push tells that a device may lock itself. */
  private static final double LARGE = 1e3;

  /** Multiples of the loads up to this are rounding. */
  private static final double ROUNDING = 1e-13;

  /** Relative step above a factor that may be the least one. */
  private static final double BESIDE = 1e-9;

  /** Relative step of the first look for a lower factor, and how the steps grow. */
  private static final double STEP = 1e-4;

  private static final double GROWTH = 16;

  private final Admissible admissible;
  private final FrictionLevel stated;
  private final List<Integer> pushes;
  private final Goal most;

  SelfLocking(Device device, Admissible admissible, FrictionLevel stated) {
    this.admissible = admissible;
    this.stated = stated;
    pushes = LeastForces.columns(device, admissible.assembly());
    most = Goal.number(1, admissible.columns());
  }

  /** A factor at which a device just holds, and the squeeze that holds it there. */
  record Squeezed(double factor, Admissible.Found found) {}

  /** What the state of a squeeze is the greatest of. */
  Goal goal() {
    return most;
  }

  /** Whether forces are so large that the device may lock itself, and this search can tell. */
  boolean mayBe(Admissible.Found found) {
    double[] forces = found.extreme().forces();
    double largest = 0;
    for (int column : pushes) {
      largest = Math.max(largest, forces[column]);
    }
    return largest > LARGE * admissible.scale() && admissible.isProportional(stated);
  }

  /**
   * The least factor.
   *
   * @param enough a factor at which the device holds
   * @param accuracy relative accuracy
   * @param least factors below this are of no interest
   * @return empty if the device does not lock itself there
   */
  Optional<Squeezed> find(double enough, double accuracy, double least) {
    // at the very factor the loads that can be held are rounding
    double high = enough * (1 + BESIDE);
    Optional<Admissible.Found> found = holds(high);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    double low = high;
    for (double step = STEP; low == high && high > least; step *= GROWTH) {
      low = Math.max(0, high - step * enough);
      Optional<Admissible.Found> there = holds(low);
      if (there.isPresent()) {
        high = low;
        found = there;
      }
    }
    while (high - low > accuracy * high && high > least) {
      double middle = (low + high) / 2;
      Optional<Admissible.Found> there = holds(middle);
      if (there.isPresent()) {
        high = middle;
        found = there;
      } else {
        low = middle;
      }
    }
    // loads that a squeeze of their own size can hold are no matter of squeezing
    double factor = high;
    return found
        .filter(there -> there.extreme().number() < 1 / LARGE)
        .map(there -> new Squeezed(factor, there));
  }

  private Optional<Admissible.Found> holds(double factor) {
    Admissible.Found found = admissible.squeezed(stated.times(factor), pushes, most);
    Extreme extreme = found.extreme();
    return extreme.isFound() && extreme.number() > ROUNDING ? Optional.of(found) : Optional.empty();
  }
}
