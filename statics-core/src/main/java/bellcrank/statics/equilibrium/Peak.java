package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Side;

/**
 * A greatest or least value of a force inside a bar.
 *
 * @param at where it is, in m from the bar's start; the first place if there are several
 * @param side on which side of that place, where the force jumps there
 * @param value in N, or in N·m for a moment
 */
public record Peak(double at, Side side, double value) {}
