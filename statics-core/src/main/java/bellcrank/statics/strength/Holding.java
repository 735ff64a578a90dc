package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.internal.HoldingSpan;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What is to be said of a device that does not hold at every multiple up to its limit. */
final class Holding {

  /** A least multiple below this is none. */
  private static final double NONE = 1e-9;

  private static final String OF_BALANCE = "; the checks are of its balance alone";

  private final String where;
  private final Set<String> remarks = new LinkedHashSet<>();

  /** What is so at every multiple. */
  private Optional<String> always = Optional.empty();

  /** The multiple from which on it holds in all poses, and what is to be said below it. */
  private double from = Double.NEGATIVE_INFINITY;

  private String below = "";

  private Holding(String where) {
    this.where = where;
  }

  /** In one pose. */
  static Holding inOnePose() {
    return new Holding("");
  }

  /** In some of many poses: the same words in all of them, so that each is told once. */
  static Holding inSomePoses() {
    return new Holding("in some poses ");
  }

  /** Whether nothing is to be said: it holds from no multiple on. */
  static boolean isPlain(HoldingSpan span) {
    return span.least() <= NONE && span.greatest() >= -NONE;
  }

  /** Takes in a pose; nothing is to be said where no part could give way. */
  void add(Optional<Limit> limit) {
    if (limit.isEmpty()) {
      return;
    }
    if (limit.get() instanceof Limit.Between between) {
      add(between);
    } else if (limit.get() instanceof Limit.NotDecided open) {
      always("how far the device holds is not decided: " + open.why());
    } else {
      always("the device does not hold at any multiple" + OF_BALANCE);
    }
  }

  private void add(Limit.Between between) {
    if (between.greatest() instanceof Limit.End.At most && most.value() < -NONE) {
      always("the device does not hold even without the driving loads");
    } else if (between.greatest() instanceof Limit.End.Open open) {
      always("how far the device holds is not decided: " + open.why());
    } else if (between.least() instanceof Limit.End.At least && least.value() > NONE) {
      from(least.value());
    }
  }

  private void always(String words) {
    remarks.add(where + words);
    always = always.or(() -> Optional.of(where + words));
  }

  private void from(double multiple) {
    String more =
        where.isEmpty()
            ? String.format(Locale.ROOT, "from %.4g times the driving loads on", multiple)
            : "with some of the driving loads";
    String words = where + "the device holds only " + more + OF_BALANCE + " below that";
    remarks.add(words);
    if (multiple > from) {
      from = multiple;
      below = words;
    }
  }

  /** All that is to be said, each told once. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** Why it does not hold at a multiple, though nothing is said to give way at it. */
  Optional<String> whyNot(double multiple) {
    return multiple < from - NONE * Math.max(1, from)
        ? always.or(() -> Optional.of(below))
        : always;
  }
}
