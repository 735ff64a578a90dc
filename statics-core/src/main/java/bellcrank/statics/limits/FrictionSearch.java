package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Travel;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Finds the least common factor on all coefficients of friction by halving: more friction never
 * takes a state away, so the factors at which a device holds have no gaps.
 */
final class FrictionSearch {

  /** Factors above this count as any friction at all. */
  private static final double MOST = 1e6;

  /** Factors below this count as hardly any friction: the squeeze that they need has no bound. */
  private static final double LEAST = 1e-5;

  /** Relative accuracy of the factor. */
  private static final double ACCURACY = 1e-12;

  private final Device device;
  private final Admissible admissible;
  private final GivingWays givingWays;
  private final FrictionLevel stated;

  FrictionSearch(
      Device device, Admissible admissible, GivingWays givingWays, FrictionLevel stated) {
    this.device = device;
    this.admissible = admissible;
    this.givingWays = givingWays;
    this.stated = stated;
  }

  FrictionFactor find() {
    if (device.connections().stream().noneMatch(FrictionSearch::isRough)) {
      return new FrictionFactor.NoFriction();
    }
    Travel given = admissible.given();
    if (holds(given, 0).extreme().isFound()) {
      return new FrictionFactor.NotNeeded();
    }
    double low = 0;
    double high = 1;
    Admissible.Found found = holds(given, high);
    while (!found.extreme().isFound() && high < MOST) {
      low = high;
      high *= 4;
      found = holds(given, high);
    }
    if (!found.extreme().isFound()) {
      return found.extreme().kind() == Extreme.Kind.OPEN
          ? new FrictionFactor.NotDecided(Admissible.OPEN)
          : new FrictionFactor.NotEnough();
    }
    while (high - low > ACCURACY * high && high > LEAST / 2) {
      double middle = (low + high) / 2;
      Admissible.Found there = holds(given, middle);
      if (there.extreme().isFound()) {
        high = middle;
        found = there;
      } else {
        low = middle;
      }
    }
    SelfLocking locking = new SelfLocking(device, admissible, stated);
    if (locking.mayBe(found)) {
      Optional<SelfLocking.Squeezed> squeezed = locking.find(high, ACCURACY, LEAST / 2);
      if (squeezed.isPresent()) {
        Admissible.Found squeeze = squeezed.get().found();
        Admissible.Found loaded = found;
        return least(
            squeezed.get().factor(), () -> givingWays.locking(squeeze, locking.goal(), loaded));
      }
    }
    Admissible.Found last = found;
    return least(high, () -> givingWays.at(last, Goal.none(admissible.columns())));
  }

  private static FrictionFactor least(double factor, Supplier<GivingWay> how) {
    return factor < LEAST
        ? new FrictionFactor.AnyIsEnough()
        : new FrictionFactor.Least(factor, how.get());
  }

  private Admissible.Found holds(Travel given, double factor) {
    return admissible.greatest(given, stated.times(factor), Goal.none(admissible.columns()));
  }

  static boolean isRough(Connection connection) {
    return (connection instanceof Contact contact && contact.friction() > 0)
        || (connection instanceof ContactBase base && base.friction() > Double.MIN_NORMAL)
        || (connection instanceof Wrap wrap && wrap.friction() > 0)
        || (connection instanceof Pin pin && pin.friction() > 0)
        || (connection instanceof Screw screw && screw.friction() > 0);
  }
}
