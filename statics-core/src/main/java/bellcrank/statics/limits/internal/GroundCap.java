package bellcrank.statics.limits.internal;

/**
 * What the ground under a base gives besides friction, at the state that was found last.
 *
 * @param length length of the base out of the plane in m
 * @param pressure mean pressure on the effective area at which it sinks, in Pa; infinite if it does
 *     not
 * @param sliding resistance against sliding that does not come from friction, in N
 */
public record GroundCap(double length, double pressure, double sliding) {

  boolean canSink() {
    return pressure < Double.POSITIVE_INFINITY;
  }
}
