package bellcrank.examples.report;

import bellcrank.examples.file.Expectation;
import bellcrank.statics.equilibrium.Answer;

/**
 * An expected answer beside the one that was found.
 *
 * @param expectation what is expected
 * @param found what was found
 * @param allowed greatest difference that holds, in SI, bound included; 0 for words, which must be
 *     equal
 * @param holds whether the expectation holds
 */
public record Checked(Expectation expectation, Answer found, double allowed, boolean holds) {}
