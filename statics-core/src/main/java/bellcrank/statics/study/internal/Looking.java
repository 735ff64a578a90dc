package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Asks a function at places of a box, which are told in shares of its widths, and remembers. */
final class Looking {

  private final double[] low;
  private final double[] high;
  private final int most;
  private final BoxSearch.Function function;
  private final List<Seen> seen = new ArrayList<>();
  private int asked;
  private int missing;
  private double largest;

  /** A place and the value there. */
  static final class Seen {

    private final double[] place;
    private final double value;

    Seen(double[] place, double value) {
      this.place = place;
      this.value = value;
    }

    /** In shares of the widths; not to be changed. */
    double[] place() {
      return place;
    }

    double value() {
      return value;
    }
  }

  Looking(double[] low, double[] high, int most, BoxSearch.Function function) {
    this.low = low;
    this.high = high;
    this.most = most;
    this.function = function;
  }

  /** The value at a place; empty if there is none, or no look is left. */
  OptionalDouble at(double[] shares) {
    if (asked >= most) {
      return OptionalDouble.empty();
    }
    asked++;
    OptionalDouble value = function.at(numbers(shares));
    if (value.isPresent()) {
      seen.add(new Seen(shares.clone(), value.getAsDouble()));
      largest = Math.max(largest, Math.abs(value.getAsDouble()));
    } else {
      missing++;
    }
    return value;
  }

  /** Exact rates at a place per width of the box; none if they are not known. */
  double[] rates(double[] shares) {
    double[] rates = function.rates(numbers(shares)).clone();
    for (int i = 0; i < rates.length; i++) {
      rates[i] *= high[i] - low[i];
    }
    return rates;
  }

  /** The numbers of a place; exact at the ends. */
  double[] numbers(double[] shares) {
    double[] numbers = new double[shares.length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] =
          shares[i] <= 0
              ? low[i]
              : shares[i] >= 1 ? high[i] : low[i] + shares[i] * (high[i] - low[i]);
    }
    return numbers;
  }

  /** The first place with the greatest (sense 1) or least (sense −1) value. */
  Seen best(int sense) {
    Seen best = seen.get(0);
    for (Seen one : seen) {
      if (sense * one.value() > sense * best.value()) {
        best = one;
      }
    }
    return best;
  }

  List<Seen> seen() {
    return seen;
  }

  int asked() {
    return asked;
  }

  int left() {
    return most - asked;
  }

  int missing() {
    return missing;
  }

  double largest() {
    return largest;
  }
}
