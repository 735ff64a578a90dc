package bellcrank.statics.study;

import java.util.OptionalDouble;

/**
 * How a figure changes with one input, at the values that the model states.
 *
 * @param input the input
 * @param value its stated value, in SI units
 * @param change by how much the figure changes
 * @param how how that was found
 */
public record Effect(Input input, double value, Change change, How how) {

  /** By how much a figure changes when an input grows. */
  public sealed interface Change {

    /**
     * At one rate either way.
     *
     * @param rate change of the figure per change of the input, both in SI units
     */
    record Smooth(double rate) implements Change {}

    /**
     * At different rates to either side: where another condition decides on the other side, or a
     * size is zero.
     *
     * @param below rate where the input is smaller than stated, per growth of the input
     * @param above rate where it is greater
     */
    record Kinked(double below, double above) implements Change {}

    /**
     * To one side only: to the other there is no answer, or no such device.
     *
     * @param rate change of the figure per growth of the input, both in SI units
     * @param above whether it is so where the input is greater than stated; else where it is
     *     smaller
     */
    record OneSided(double rate, boolean above) implements Change {}

    /**
     * There is no rate.
     *
     * @param why the reason, as part of a sentence
     */
    record None(String why) implements Change {}
  }

  /** How a rate was found. */
  public enum How {
    /** Exactly: from the rate at which the known forces fall out of balance. */
    SOLVED("through the solved equations"),
    /** Exactly: from the conditions of parts that are at their limit. */
    AT_LIMIT("through the conditions that are at their limit"),
    /** Not exactly: from answers for neighbouring values, in ever smaller steps. */
    DIFFERENCES("by differences of neighbouring answers"),
    /** There was nothing to find. */
    NOT_FOUND("not found");

    private final String words;

    How(String words) {
      this.words = words;
    }

    /**
     * The way in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  /**
   * The rate of the figure where it is greatest in size: that to either side, or the steeper one.
   *
   * @return change of the figure per change of the input in SI units; empty if there is none
   */
  public OptionalDouble rate() {
    if (change instanceof Change.Smooth smooth) {
      return OptionalDouble.of(smooth.rate());
    }
    if (change instanceof Change.Kinked kinked) {
      boolean above = Math.abs(kinked.above()) >= Math.abs(kinked.below());
      return OptionalDouble.of(above ? kinked.above() : kinked.below());
    }
    return change instanceof Change.OneSided one
        ? OptionalDouble.of(one.rate())
        : OptionalDouble.empty();
  }
}
