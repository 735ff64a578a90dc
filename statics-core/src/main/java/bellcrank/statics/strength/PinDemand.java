package bellcrank.statics.strength;

/**
 * What a pin carries.
 *
 * @param force greatest force of a body on one pin in N, 0 or more
 * @param joint the pin and its plates
 */
public record PinDemand(double force, PinJoint joint) {}
