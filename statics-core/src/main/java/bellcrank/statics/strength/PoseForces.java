package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import java.util.Optional;

/**
 * What the parts of a device carry in one pose, for any multiple of the driving loads: forces
 * follow the loads linearly, so two states give all others.
 *
 * @param none without the driving loads
 * @param one with the driving loads as they are stated
 * @param limit how far the device holds; empty if it has no part that could give way, or where it
 *     was not asked
 * @param farthest no multiple beyond this is looked at
 * @param isTold whether balances tell the forces, some of which may be open; else all are known
 * @param isAlone whether nothing is carried without the driving loads, so that all forces grow in
 *     proportion to them
 */
record PoseForces(
    CarriedForces none,
    CarriedForces one,
    Optional<Limit> limit,
    double farthest,
    boolean isTold,
    boolean isAlone) {

  static PoseForces of(CarriedForces none, CarriedForces one, Optional<Limit> limit) {
    double farthest =
        end(limit).map(at -> Math.max(0, at.value())).orElse(Double.POSITIVE_INFINITY);
    return new PoseForces(none, one, limit, farthest, true, none.isZero());
  }

  /** Forces that are all known. */
  static PoseForces known(CarriedForces none, CarriedForces one, double farthest) {
    return new PoseForces(none, one, Optional.empty(), farthest, false, none.isZero());
  }

  /** The multiple at which the device gives way, if it does. */
  Optional<Limit.End.At> end() {
    return end(limit);
  }

  /** The multiple at which a limit lies, if it is one. */
  static Optional<Limit.End.At> end(Optional<Limit> limit) {
    return limit.isPresent()
            && limit.get() instanceof Limit.Between between
            && between.greatest() instanceof Limit.End.At at
        ? Optional.of(at)
        : Optional.empty();
  }
}
