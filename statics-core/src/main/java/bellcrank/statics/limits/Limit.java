package bellcrank.statics.limits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** How far a variation can go while the device can hold. */
public sealed interface Limit {

  /**
   * The device can hold from a least to a greatest value, and nowhere else.
   *
   * @param variation what is varied
   * @param least the least value
   * @param greatest the greatest value
   */
  record Between(Variation variation, End least, End greatest) implements Limit {

    /**
     * Whether it can hold without the varied loads, or with the load at distance 0.
     *
     * @return true if 0 lies between
     */
    public boolean holdsAtZero() {
      return contains(0);
    }

    /**
     * Whether a value lies between the ends.
     *
     * @param value a multiple, or a distance in m
     * @return true if it does, ends included
     */
    public boolean contains(double value) {
      return !(least instanceof End.At low && value < low.value() - 1e-9)
          && !(greatest instanceof End.At high && value > high.value() + 1e-9);
    }

    /**
     * For loads that are multiplied: how much they may grow, as a share of the stated ones.
     *
     * @return 0.38 for 38 %; negative if the stated loads are too much; empty if unlimited or a
     *     place is varied
     */
    public OptionalDouble margin() {
      return variation instanceof Variation.Multiple && greatest instanceof End.At at
          ? OptionalDouble.of(at.value() - 1)
          : OptionalDouble.empty();
    }
  }

  /**
   * The device holds at no value of what is varied: infeasible at zero already, and anywhere else.
   *
   * @param variation what is varied
   */
  record Never(Variation variation) implements Limit {}

  /**
   * The search ended without a decision.
   *
   * @param variation what is varied
   * @param why what was tried
   */
  record NotDecided(Variation variation, String why) implements Limit {}

  /** One end of what is possible. */
  sealed interface End {

    /**
     * At a value the device gives way. How it does so is worked out when it is asked for, once:
     * that takes many times as long as the value. Immutable for its users, also from several
     * threads.
     */
    final class At implements End {

      private final double value;
      private final double gap;
      private final Supplier<GivingWay> finder;
      private volatile Optional<GivingWay> how = Optional.empty();

      At(double value, double gap, Supplier<GivingWay> finder) {
        this.value = value;
        this.gap = gap;
        this.finder = finder;
      }

      /**
       * Where the device gives way.
       *
       * @return a multiple, or a distance in m
       */
      public double value() {
        return value;
      }

      /**
       * How far the true end may lie beyond.
       *
       * @return a bound on it, in the unit of the value; 0 where it is exact but for rounding
       */
      public double gap() {
        return gap;
      }

      /**
       * How it gives way.
       *
       * @return what happens at the parts that are at their limit, and the motion
       */
      public GivingWay how() {
        Optional<GivingWay> known = how;
        if (known.isEmpty()) {
          known = Optional.of(finder.get());
          how = known;
        }
        return known.get();
      }

      @Override
      public boolean equals(Object other) {
        return other instanceof At at
            && Double.compare(value, at.value) == 0
            && Double.compare(gap, at.gap) == 0
            && how().equals(at.how());
      }

      @Override
      public int hashCode() {
        return Double.hashCode(value) * 31 + Double.hashCode(gap);
      }

      @Override
      public String toString() {
        return "At[value=" + value + ", gap=" + gap + ", how=" + how() + "]";
      }
    }

    /**
     * A place reaches the end of the line before anything gives way.
     *
     * @param value distance of that end in m
     */
    record EndOfLine(double value) implements End {}

    /**
     * The search ended without a decision.
     *
     * @param why what was tried
     */
    record Open(String why) implements End {}

    /** However large: without friction there would be a limit, with it the device locks itself. */
    record SelfLocking() implements End {}

    /** However large, with friction or without. */
    record Unlimited() implements End {}
  }
}
