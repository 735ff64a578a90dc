package bellcrank.statics.study;

import bellcrank.statics.units.UnitSystem;

/**
 * In how many samples something happened. Chances are estimates from samples, so they have an error
 * of their own: its bounds are those of E. B. Wilson, Probable inference, the law of succession,
 * and statistical inference, 1927 (formula from memory), at a confidence of 95 %.
 *
 * @param what what happened
 * @param count in how many samples
 * @param open in how many it was left open, since a figure has no number there, nothing can be
 *     built, or it was not decided
 * @param samples of how many, 1 or more
 */
public record Chance(Happening what, long count, long open, long samples) {

  /** Deviations of a normal distribution that hold 95 % of it between them. */
  static final double SURE = 1.959963984540054;

  /**
   * The share of all samples in which it happened.
   *
   * @return 0 to 1
   */
  public double share() {
    return (double) count / samples;
  }

  /**
   * The lower bound of the chance. Samples that leave it open count as if it did not happen.
   *
   * @return 0 to the share
   */
  public double least() {
    return count == 0 ? 0 : Math.max(0, middle(count) - half(count));
  }

  /**
   * The upper bound of the chance. Samples that leave it open count as if it happened.
   *
   * @return the share to 1
   */
  public double greatest() {
    long most = count + open;
    return most == samples ? 1 : Math.min(1, middle(most) + half(most));
  }

  private double middle(long happened) {
    double share = (double) happened / samples;
    return (share + SURE * SURE / (2 * samples)) / (1 + SURE * SURE / samples);
  }

  private double half(long happened) {
    double share = (double) happened / samples;
    double spread = share * (1 - share) / samples + SURE * SURE / (4.0 * samples * samples);
    return SURE * Math.sqrt(spread) / (1 + SURE * SURE / samples);
  }

  /**
   * The chance in a sentence without its full stop.
   *
   * @param units units of the bounds
   * @return such as {@code in 3.20 % ± 0.04 % of the samples heel slips}
   */
  public String words(UnitSystem units) {
    return SampleWords.chance(this, units);
  }
}
