package bellcrank.statics.study.internal;

import bellcrank.statics.study.internal.Ledger.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Searches one number: a grid over its range, then between the samples. Where a goal begins or ends
 * to be kept is found by halving, where the value or what is missed is least by Brent's method (R.
 * P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5), from every sample
 * that is no worse than its neighbours.
 */
final class OneNumber {

  /** Number of steps of the grid. */
  static final int STEPS = 240;

  private static final double NARROWEST = 1e-15;
  private static final int MOST = 200;

  private final Ledger ledger;

  OneNumber(Ledger ledger) {
    this.ledger = ledger;
  }

  void run(double start) {
    List<double[]> grid = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      grid.add(new double[] {(double) k / STEPS});
    }
    List<Seen> seen = ledger.survey(grid);
    ledger.look(new double[] {start});
    for (int k = 0; k < STEPS; k++) {
      between(seen.get(k), seen.get(k + 1));
    }
    for (int k = 0; k <= STEPS; k++) {
      Seen before = seen.get(Math.max(0, k - 1));
      Seen after = seen.get(Math.min(STEPS, k + 1));
      if (isNoWorse(seen.get(k), before) && isNoWorse(seen.get(k), after)) {
        leastBetween(before.place[0], after.place[0], seen.get(k).sight);
      }
    }
  }

  private boolean isNoWorse(Seen one, Seen other) {
    return one.sight.isThere() && !ledger.isBetter(other, one);
  }

  /** Looks from where something changes between two neighbours. */
  private void between(Seen one, Seen other) {
    if (one.sight.isThere() != other.sight.isThere()) {
      Seen edge = halve(one, other, Sight::isThere);
      Seen inside = one.sight.isThere() ? one : other;
      between(inside, edge);
      return;
    }
    if (!one.sight.isThere()) {
      return;
    }
    for (int goal = 0; goal < ledger.goals(); goal++) {
      int own = goal;
      if (one.sight.miss(goal) > 0 != other.sight.miss(goal) > 0) {
        halve(one, other, sight -> sight.isThere() && sight.miss(own) > 0);
      }
    }
    if (ledger.keeps(one.sight) != ledger.keeps(other.sight)) {
      halve(one, other, ledger::keeps);
    }
  }

  /**
   * Halves to where a quality changes; both sides are looked at on the way.
   *
   * @return the last place that has it
   */
  private Seen halve(Seen one, Seen other, Predicate<Sight> has) {
    Seen with = has.test(one.sight) ? one : other;
    Seen without = with == one ? other : one;
    while (Math.abs(with.place[0] - without.place[0]) > NARROWEST) {
      double[] middle = {(with.place[0] + without.place[0]) / 2};
      Seen seen = new Seen(middle, ledger.look(middle));
      if (has.test(seen.sight)) {
        with = seen;
      } else {
        without = seen;
      }
    }
    return with;
  }

  private void leastBetween(double from, double to, Sight sight) {
    boolean kept = ledger.keeps(sight);
    try {
      new BrentOptimizer(NARROWEST, NARROWEST)
          .optimize(
              new MaxEval(MOST),
              new UnivariateObjectiveFunction(
                  at -> {
                    Sight there = ledger.look(new double[] {at});
                    if (!there.isThere() || (kept && !ledger.keeps(there))) {
                      return Double.MAX_VALUE;
                    }
                    return kept ? ledger.value(there) : ledger.missed(there);
                  }),
              GoalType.MINIMIZE,
              new SearchInterval(from, to));
    } catch (MathIllegalStateException slow) {
      // the best of the looks is kept in the ledger
      return;
    }
  }
}
