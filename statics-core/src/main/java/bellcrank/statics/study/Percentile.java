package bellcrank.statics.study;

import java.util.OptionalDouble;

/**
 * A value that a share of the samples is at or below. It is one of the samples, not a value between
 * two of them.
 *
 * @param share the share, above 0 and below 1
 * @param si the value, SI
 * @param least lower bound of the value if there were samples without end, at a confidence of 95 %
 *     with the upper one, SI; empty if there are too few samples to tell one
 * @param greatest upper bound, SI; empty if there are too few samples to tell one
 */
public record Percentile(double share, double si, OptionalDouble least, OptionalDouble greatest) {}
