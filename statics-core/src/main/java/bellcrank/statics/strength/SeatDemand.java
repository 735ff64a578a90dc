package bellcrank.statics.strength;

/**
 * How a chain pushes into its notch.
 *
 * @param angle angle between the push and the depth of the notch in rad, 0 to π
 * @param seat the notch
 */
public record SeatDemand(double angle, ChainSeat seat) {}
