package bellcrank.statics.limits;

import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import java.util.Optional;

/**
 * Where neither less load nor more friction would do: the parts that would have to give more than
 * they can, if what is asked beyond their limits is made the least at the worst of them.
 */
final class LeastNeed {

  private static final double MOST = 1e6;
  private static final double ACCURACY = 1e-9;

  /** What is lacking, as a share of the loads, when rounding may well be all that is lacking. */
  private static final double NOTHING = 1e-14;

  private final Admissible admissible;
  private final GivingWays givingWays;
  private final FrictionLevel friction;

  LeastNeed(Admissible admissible, GivingWays givingWays, FrictionLevel friction) {
    this.admissible = admissible;
    this.givingWays = givingWays;
    this.friction = friction;
  }

  /** Empty if so little is lacking that it cannot be told from rounding. */
  Optional<GivingWay> find() {
    Goal any = Goal.none(admissible.columns());
    double low = 0;
    double high = 1;
    while (!admissible.widened(friction, any, high).extreme().isFound() && high < MOST) {
      high *= 8;
    }
    // what is as good as nothing has no digits to be found
    while (high - low > ACCURACY * Math.max(high, ACCURACY)) {
      double middle = (low + high) / 2;
      if (admissible.widened(friction, any, middle).extreme().isFound()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high > NOTHING
        ? Optional.of(givingWays.widened(admissible.widened(friction, any, high), any, high))
        : Optional.empty();
  }
}
