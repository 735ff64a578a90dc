package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import java.util.function.Supplier;

/**
 * A number of a model that is not known well.
 *
 * @param input the number
 * @param spread how it may differ
 */
public record Uncertain(Input input, Spread spread) {

  /**
   * A number within the same limits on both sides of the stated value.
   *
   * @param input the number
   * @param either how far it can be from the stated value, in SI units, above 0
   * @return the uncertain number
   * @throws ModelException naming the input, if the limit is not a number above 0
   */
  public static Uncertain within(Input input, double either) {
    return of(input, () -> Spread.within(either));
  }

  /**
   * A number of which every value between two bounds is as likely.
   *
   * @param input the number
   * @param from least value, in SI units
   * @param to greatest value, above the least
   * @return the uncertain number
   * @throws ModelException naming the input, if the bounds are not finite and in order
   */
  public static Uncertain uniform(Input input, double from, double to) {
    return of(input, () -> new Spread.Uniform(from, to));
  }

  /**
   * A number with a normal distribution.
   *
   * @param input the number
   * @param mean its mean, in SI units
   * @param deviation standard deviation, above 0
   * @return the uncertain number
   * @throws ModelException naming the input, if a number is not finite or the deviation not above 0
   */
  public static Uncertain normal(Input input, double mean, double deviation) {
    return of(input, () -> new Spread.Normal(mean, deviation));
  }

  /**
   * A number with a triangular distribution.
   *
   * @param input the number
   * @param from least value, in SI units
   * @param peak likeliest value
   * @param to greatest value, above the least
   * @return the uncertain number
   * @throws ModelException naming the input, if the numbers are not finite and in order
   */
  public static Uncertain triangular(Input input, double from, double peak, double to) {
    return of(input, () -> new Spread.Triangular(from, peak, to));
  }

  private static Uncertain of(Input input, Supplier<Spread> spread) {
    try {
      return new Uncertain(input, spread.get());
    } catch (ModelException wrong) {
      throw new ModelException(
          wrong.problems().stream()
              .map(one -> new Problem(input.text(), one.field(), one.value(), one.wanted()))
              .toList());
    }
  }

  /**
   * The least value that it can have.
   *
   * @param model the model that states it
   * @return in SI units; −∞ for a normal distribution
   * @throws ModelException if the model has no such number
   */
  public double least(Model model) {
    return spread.least(input.value(model));
  }

  /**
   * The greatest value that it can have.
   *
   * @param model the model that states it
   * @return in SI units; ∞ for a normal distribution
   * @throws ModelException if the model has no such number
   */
  public double greatest(Model model) {
    return spread.greatest(input.value(model));
  }
}
