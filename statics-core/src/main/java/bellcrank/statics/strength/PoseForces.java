package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import java.util.Optional;

/**
 * What the parts of a device carry in one pose, for any multiple of the driving loads: forces
 * follow the loads linearly, so two states give all others.
 *
 * @param none without the driving loads
 * @param one with the driving loads as they are stated
 * @param limit how far the device holds; empty if it has no part that could give way
 */
record PoseForces(CarriedForces none, CarriedForces one, Optional<Limit> limit) {

  /** The multiple at which the device gives way, if it does. */
  Optional<Limit.End.At> end() {
    return limit.isPresent()
            && limit.get() instanceof Limit.Between between
            && between.greatest() instanceof Limit.End.At at
        ? Optional.of(at)
        : Optional.empty();
  }

  /** No multiple beyond this is looked at. */
  double farthest() {
    return end().map(at -> Math.max(0, at.value())).orElse(Double.POSITIVE_INFINITY);
  }
}
