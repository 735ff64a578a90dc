package bellcrank.statics.study.internal;

import bellcrank.statics.study.internal.Ledger.Seen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;

/**
 * Searches several numbers at once. A survey of the whole box tells where to begin; from several
 * beginnings a {@link Descent} goes down, and an evolution strategy that learns the shape of its
 * surroundings (N. Hansen, A. Ostermeier, Evolutionary Computation 9 (2001), pages 159 to 195), as
 * the library has it, leads out of hollows and along kinks. What is missed has a price that grows
 * until all goals are kept. Random numbers begin alike each time, so a search comes out the same.
 */
final class SeveralNumbers {

  /** Places of the survey for each number. */
  private static final int SURVEY = 40;

  private static final int BEGINNINGS = 6;
  private static final double APART = 0.15;
  private static final double FIRST_PRICE = 30;
  private static final double DEAREST = 1e7;
  private static final double DEARER = 30;

  /** Widths, in shares of the ranges, with which the strategy sets out. */
  private static final double[] WIDTHS = {0.3, 0.02};

  private static final int GENERATIONS = 400;
  private static final int SEED = 20_011;
  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

  /** More numbers than this are not searched at once. */
  static final int MOST_NUMBERS = PRIMES.length;

  private static final double NO_SIGHT = 1e12;

  private final Ledger ledger;
  private final int numbers;

  SeveralNumbers(Ledger ledger, int numbers) {
    this.ledger = ledger;
    this.numbers = numbers;
  }

  void run(double[] start) {
    List<Seen> survey = ledger.survey(places(start));
    double price = FIRST_PRICE;
    descend(beginnings(survey, price), 1, price);
    while (!ledger.keeps(ledger.best().sight) && price < DEAREST) {
      price *= DEARER;
      descend(List.of(ledger.best()), 1, price);
    }
    if (!ledger.keeps(ledger.best().sight)) {
      descend(beginnings(survey, DEAREST), 0, 1);
    }
    double weight = ledger.keeps(ledger.best().sight) ? 1 : 0;
    for (double width : WIDTHS) {
      if (ledger.best().sight.isThere()) {
        evolve(new Descent(ledger, weight, weight == 0 ? 1 : price), width);
        descend(List.of(ledger.best()), weight, weight == 0 ? 1 : price);
      }
    }
    if (weight > 0) {
      new Settling(ledger).from(ledger.best());
    }
  }

  /** Where it may begin, the middle, and places spread over the box evenly (Halton's numbers). */
  private List<double[]> places(double[] start) {
    List<double[]> places = new ArrayList<>();
    places.add(start);
    double[] middle = new double[numbers];
    java.util.Arrays.fill(middle, 0.5);
    places.add(middle);
    for (int k = 1; k <= SURVEY * numbers; k++) {
      double[] place = new double[numbers];
      for (int i = 0; i < numbers; i++) {
        place[i] = mirrored(k, PRIMES[i]);
      }
      places.add(place);
    }
    return places;
  }

  /** The digits of a number to some base, mirrored at the point. */
  private static double mirrored(int number, int base) {
    double sum = 0;
    double share = 1.0 / base;
    for (int rest = number; rest > 0; rest /= base) {
      sum += share * (rest % base);
      share /= base;
    }
    return sum;
  }

  private List<Seen> beginnings(List<Seen> survey, double price) {
    Descent way = new Descent(ledger, 1, price);
    List<Seen> sorted = new ArrayList<>(survey);
    sorted.sort(Comparator.comparingDouble(one -> way.height(one.sight)));
    List<Seen> chosen = new ArrayList<>();
    for (Seen one : sorted) {
      if (one.sight.isThere()
          && chosen.size() < BEGINNINGS
          && chosen.stream().allMatch(other -> distance(one, other) > APART)) {
        chosen.add(one);
      }
    }
    return chosen;
  }

  private static double distance(Seen one, Seen other) {
    double largest = 0;
    for (int i = 0; i < one.place.length; i++) {
      largest = Math.max(largest, Math.abs(one.place[i] - other.place[i]));
    }
    return largest;
  }

  private void descend(List<Seen> beginnings, double weight, double price) {
    Descent way = new Descent(ledger, weight, price);
    beginnings.forEach(way::from);
  }

  private void evolve(Descent way, double width) {
    Seen from = ledger.best();
    double[] none = new double[numbers];
    double[] all = new double[numbers];
    double[] widths = new double[numbers];
    java.util.Arrays.fill(all, 1);
    java.util.Arrays.fill(widths, width);
    try {
      new CMAESOptimizer(
              GENERATIONS,
              Double.NEGATIVE_INFINITY,
              true,
              0,
              0,
              new MersenneTwister(SEED),
              false,
              null)
          .optimize(
              new MaxEval(Integer.MAX_VALUE),
              new ObjectiveFunction(place -> Math.min(NO_SIGHT, way.height(ledger.look(place)))),
              GoalType.MINIMIZE,
              new InitialGuess(from.place),
              new SimpleBounds(none, all),
              new CMAESOptimizer.Sigma(widths),
              new CMAESOptimizer.PopulationSize(4 + (int) (3 * Math.log(numbers))));
    } catch (MathIllegalStateException ended) {
      // the best of the looks is kept in the ledger
      return;
    }
  }
}
