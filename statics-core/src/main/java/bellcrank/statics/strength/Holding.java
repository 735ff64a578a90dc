package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.internal.HoldingSpan;
import java.util.Locale;
import java.util.Optional;

/** What is to be said of a device that does not hold at every multiple up to its limit. */
final class Holding {

  /** A least multiple below this is none. */
  private static final double NONE = 1e-9;

  private static final String OF_BALANCE = "; the checks are of its balance alone";

  private Holding() {}

  /** In one pose. */
  static Optional<String> remark(PoseForces forces) {
    return forces.limit().flatMap(limit -> of(limit, ""));
  }

  /** In one of many poses: the same words in all of them. */
  static Optional<String> remarkOfSome(Optional<Limit> limits) {
    return limits.flatMap(limit -> of(limit, "in some poses "));
  }

  /** Whether nothing is to be said: it holds from no multiple on. */
  static boolean isPlain(HoldingSpan span) {
    return span.least() <= NONE && span.greatest() >= -NONE;
  }

  private static Optional<String> of(Limit limit, String where) {
    if (limit instanceof Limit.Never) {
      return Optional.of(where + "the device does not hold at any multiple" + OF_BALANCE);
    }
    if (limit instanceof Limit.NotDecided open) {
      return Optional.of(where + "how far the device holds is not decided: " + open.why());
    }
    return limit instanceof Limit.Between between ? of(between, where) : Optional.empty();
  }

  private static Optional<String> of(Limit.Between between, String where) {
    if (between.greatest() instanceof Limit.End.At most && most.value() < -NONE) {
      return Optional.of(where + "the device does not hold even without the driving loads");
    }
    if (between.greatest() instanceof Limit.End.Open open) {
      return Optional.of(where + "how far the device holds is not decided: " + open.why());
    }
    if (between.least() instanceof Limit.End.At least && least.value() > NONE) {
      String from =
          where.isEmpty()
              ? String.format(Locale.ROOT, "from %.4g times the driving loads on", least.value())
              : "with some of the driving loads";
      return Optional.of(where + "the device holds only " + from + OF_BALANCE + " below that");
    }
    return Optional.empty();
  }
}
