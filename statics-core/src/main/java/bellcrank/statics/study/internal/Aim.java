package bellcrank.statics.study.internal;

/**
 * A goal of a search.
 *
 * @param isOneValue whether room is a miss as well: one value is asked for
 * @param size what its bound is like in size, 0 or more; a measure for what is rounding
 */
public record Aim(boolean isOneValue, double size) {}
