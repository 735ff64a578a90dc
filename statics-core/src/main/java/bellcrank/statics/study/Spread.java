package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;

/** How a number may differ from what is stated, in the unit of the number (SI). */
public sealed interface Spread {

  /**
   * Within limits about the stated value, nothing said about what is more likely. As samples it
   * counts as uniform.
   *
   * @param minus how far below the stated value it can be, 0 or more
   * @param plus how far above, 0 or more; not both 0
   */
  record Within(double minus, double plus) implements Spread {

    /**
     * Checks the limits.
     *
     * @param minus how far below the stated value it can be, 0 or more
     * @param plus how far above, 0 or more; not both 0
     * @throws ModelException if one is negative or not finite, or both are 0
     */
    public Within {
      minus = notNegative("tolerance below", minus);
      plus = notNegative("tolerance above", plus);
      if (minus == 0 && plus == 0) {
        throw new ModelException("spread", "tolerance", "0 both ways", "a width above 0");
      }
    }
  }

  /**
   * Every value between two bounds is as likely.
   *
   * @param from least value
   * @param to greatest value, above the least
   */
  record Uniform(double from, double to) implements Spread {

    /**
     * Checks the bounds.
     *
     * @param from least value
     * @param to greatest value, above the least
     * @throws ModelException if one is not finite or they are not in order
     */
    public Uniform {
      from = finite("least value", from);
      to = finite("greatest value", to);
      ordered(from, to);
    }
  }

  /**
   * The bell-shaped distribution, which has no ends.
   *
   * @param mean its middle
   * @param deviation standard deviation, above 0
   */
  record Normal(double mean, double deviation) implements Spread {

    /**
     * Checks the numbers.
     *
     * @param mean its middle
     * @param deviation standard deviation, above 0
     * @throws ModelException if one is not finite or the deviation is not above 0
     */
    public Normal {
      mean = finite("mean", mean);
      if (!(finite("standard deviation", deviation) > 0)) {
        throw new ModelException("spread", "standard deviation", deviation, "a number above 0");
      }
    }
  }

  /**
   * Likeliest at a peak, falling linearly to nothing at both ends.
   *
   * @param from least value
   * @param peak likeliest value, between the ends or at one of them
   * @param to greatest value, above the least
   */
  record Triangular(double from, double peak, double to) implements Spread {

    /**
     * Checks the numbers.
     *
     * @param from least value
     * @param peak likeliest value, between the ends or at one of them
     * @param to greatest value, above the least
     * @throws ModelException if one is not finite or they are not in order
     */
    public Triangular {
      from = finite("least value", from);
      to = finite("greatest value", to);
      ordered(from, to);
      if (!(finite("peak", peak) >= from && peak <= to)) {
        throw new ModelException(
            "spread", "peak", peak, "a number between the bounds, or one of them");
      }
    }
  }

  /**
   * Within the same limits on both sides.
   *
   * @param either how far the number can be from the stated one, above 0
   * @return the spread
   * @throws ModelException if the limit is not a number above 0
   */
  static Within within(double either) {
    return new Within(either, either);
  }

  /**
   * The least possible value.
   *
   * @param stated the value that the model states
   * @return in SI units; −∞ for a normal distribution
   */
  default double least(double stated) {
    return quantile(0, stated);
  }

  /**
   * The greatest possible value.
   *
   * @param stated the value that the model states
   * @return in SI units; ∞ for a normal distribution
   */
  default double greatest(double stated) {
    return quantile(1, stated);
  }

  /**
   * The value that a share of all values is at or below.
   *
   * @param share from 0 to 1
   * @param stated the value that the model states; only limits about it look at it
   * @return in SI units; for a normal distribution without bound at the shares 0 and 1
   * @throws ModelException if the share is not from 0 to 1
   */
  default double quantile(double share, double stated) {
    if (!(share >= 0 && share <= 1)) {
      throw new ModelException("spread", "share", share, "a number from 0 to 1");
    }
    return Quantiles.of(this, share, stated);
  }

  /**
   * How far the number is from the middle as a rule: the standard deviation of a normal
   * distribution, half the width of all others.
   *
   * @return in SI units, above 0
   */
  default double reach() {
    if (this instanceof Normal normal) {
      return normal.deviation();
    }
    return (greatest(0) - least(0)) / 2;
  }

  private static double finite(String field, double value) {
    if (!Double.isFinite(value)) {
      throw new ModelException("spread", field, value, "a finite number");
    }
    return value + 0.0;
  }

  private static double notNegative(String field, double value) {
    if (!(finite(field, value) >= 0)) {
      throw new ModelException("spread", field, value, "0 or more");
    }
    return value + 0.0;
  }

  private static void ordered(double from, double to) {
    if (from > to) {
      throw new ModelException("spread", "bounds", from + " to " + to, "the least one first");
    }
    if (from == to) {
      throw new ModelException("spread", "bounds", from + " to " + to, "a width above 0");
    }
  }
}
