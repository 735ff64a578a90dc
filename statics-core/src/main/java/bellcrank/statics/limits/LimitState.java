package bellcrank.statics.limits;

import bellcrank.statics.equilibrium.Balance;

/**
 * A state with nothing to spare, as where a sought effort is at an end of its range: the forces
 * there, and how the device is about to give way. Forces that this does not fix have one of several
 * values.
 *
 * @param balance the device with the forces of this state
 * @param how what is about to happen
 * @param friction factor on all coefficients of friction in this state; 1 for the stated ones
 */
public record LimitState(Balance balance, GivingWay how, double friction) {}
