package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * A figure as a source prints it: a range, or a single value, whose bounds are equal.
 *
 * @param low lower bound, finite, included
 * @param high upper bound, finite, included, at least {@code low}
 */
public record Span(double low, double high) {

  /**
   * Checks the bounds.
   *
   * @param low lower bound, finite, included
   * @param high upper bound, finite, included, at least {@code low}
   * @throws ModelException if a bound is not finite or they are in the wrong order
   */
  public Span {
    low = Check.finite("span", "low", low);
    high = Check.finite("span", "high", high);
    if (low > high) {
      throw new ModelException("span", "high", high, "at least the lower bound, " + low);
    }
  }

  /**
   * A range.
   *
   * @param low lower bound, finite, included
   * @param high upper bound, finite, included, at least {@code low}
   * @return the span
   * @throws ModelException if a bound is not finite or they are in the wrong order
   */
  public static Span of(double low, double high) {
    return new Span(low, high);
  }

  /**
   * A single value.
   *
   * @param value the value, finite
   * @return the span from it to itself
   * @throws ModelException if it is not finite
   */
  public static Span of(double value) {
    return new Span(value, value);
  }

  /**
   * Whether the source gives one value and leaves no choice.
   *
   * @return whether the bounds are equal
   */
  public boolean isSingle() {
    return low == high;
  }
}
