package bellcrank.statics.strength;

/**
 * What the equal plates of one part of a body carry at a pin.
 *
 * @param force force on them together in N, 0 or more
 * @param joint the pin
 * @param plate the plates
 */
public record PlateDemand(double force, PinJoint joint, PinJoint.Plate plate) {}
