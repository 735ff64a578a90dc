package bellcrank.statics.study.internal;

import bellcrank.statics.study.internal.Ledger.Seen;
import java.util.Optional;

/**
 * Goes down from a place by linear programs within a region that grows where they foretell the
 * truth and shrinks where they do not (R. Fletcher, Practical Methods of Optimization, 2nd ed.,
 * 1987, chapter 14, from memory). Where as many goals and bounds stop it as there are numbers it
 * ends on all of them at the speed of Newton's method. Slopes are differences.
 */
final class Descent {

  /** Largest and smallest step of a difference, in shares of the ranges. */
  static final double DIFFERENCE = 1e-5;

  private static final double LEAST_DIFFERENCE = 1e-7;

  /** A region smaller than this, in shares of the ranges, ends the descent. */
  static final double SMALLEST = 1e-12;

  private static final double FIRST = 0.1;
  private static final double ROUNDING = 1e-15;
  private static final double POOR = 0.1;
  private static final double GOOD = 0.7;
  private static final int MOST_STEPS = 100;

  private final Ledger ledger;
  private final double weight;
  private final double price;

  /**
   * A way down.
   *
   * @param weight what the value counts for: 1, or 0 where only misses count
   * @param price what a miss of its size counts for
   */
  Descent(Ledger ledger, double weight, double price) {
    this.ledger = ledger;
    this.weight = weight;
    this.price = price;
  }

  /** What is to be made least. */
  double height(Sight sight) {
    return sight.isThere()
        ? weight * ledger.value(sight) + price * ledger.missed(sight)
        : Double.POSITIVE_INFINITY;
  }

  /** The place where it ends. */
  Seen from(Seen start) {
    Seen now = start;
    double region = FIRST;
    for (int step = 0; step < MOST_STEPS && region > SMALLEST; step++) {
      LinearStep program = program(now, Math.max(LEAST_DIFFERENCE, Math.min(DIFFERENCE, region)));
      Optional<Seen> next = Optional.empty();
      while (next.isEmpty() && region > SMALLEST) {
        double[] found = program.between(bounds(now, -region), bounds(now, region)).orElse(null);
        if (found == null) {
          return now;
        }
        double foretold = height(now.sight) - program.height(found);
        if (!(foretold > ROUNDING * (1 + Math.abs(height(now.sight))))) {
          return now;
        }
        Seen tried = look(now, found);
        double gain = height(now.sight) - height(tried.sight);
        if (gain > 0) {
          next = Optional.of(tried);
        }
        if (gain > GOOD * foretold) {
          region = Math.min(0.5, 2 * region);
        } else if (!(gain > POOR * foretold)) {
          region = Math.min(region, largest(found)) / 4;
        }
      }
      now = next.orElse(now);
    }
    return now;
  }

  private Seen look(Seen from, double[] step) {
    double[] place = from.place.clone();
    for (int i = 0; i < place.length; i++) {
      place[i] = Math.max(0, Math.min(1, place[i] + step[i]));
    }
    return new Seen(place, ledger.look(place));
  }

  private static double largest(double[] step) {
    double largest = 0;
    for (double one : step) {
      largest = Math.max(largest, Math.abs(one));
    }
    return largest;
  }

  /** How far each coordinate may go within a region, the signed size of it, and the box. */
  private static double[] bounds(Seen now, double region) {
    double[] bounds = new double[now.place.length];
    for (int i = 0; i < bounds.length; i++) {
      bounds[i] = Math.max(-now.place[i], Math.min(1 - now.place[i], region));
    }
    return bounds;
  }

  private LinearStep program(Seen now, double difference) {
    int n = now.place.length;
    double[] slope = new double[n];
    double[][] slopes = new double[ledger.goals()][n];
    for (int i = 0; i < n; i++) {
      Seen above = ledger.beside(now, i, difference);
      Seen below = ledger.beside(now, i, -difference);
      double width = above.place[i] - below.place[i];
      if (!(width > 0)) {
        continue;
      }
      slope[i] = weight * (ledger.value(above.sight) - ledger.value(below.sight)) / width;
      for (int goal = 0; goal < slopes.length; goal++) {
        slopes[goal][i] =
            (ledger.signed(above.sight, goal) - ledger.signed(below.sight, goal)) / width;
      }
    }
    LinearStep program = new LinearStep(weight * ledger.value(now.sight), slope, price);
    for (int goal = 0; goal < slopes.length; goal++) {
      program.goal(slopes[goal], ledger.signed(now.sight, goal), ledger.isOneValue(goal));
    }
    return program;
  }
}
