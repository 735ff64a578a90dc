package bellcrank.statics.harness;

import bellcrank.statics.equilibrium.Answer;

/**
 * An expected answer beside the one that was found.
 *
 * @param expected what is expected
 * @param found what was found
 * @param allowed greatest difference that holds, in SI, bound included; 0 for words, which must be
 *     the same
 * @param holds whether it is as expected
 */
public record CheckedAnswer(ExpectedAnswer expected, Answer found, double allowed, boolean holds) {}
