package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Keeps account of a search: how often it looked, what goals and values are like in size, and the
 * best place so far. A place that keeps all goals is better than one that does not; of those that
 * keep them the one with the least value, of the others the one that misses least in all.
 */
final class Ledger {

  /** Share of the bound of a goal by which it may be missed and still be kept. */
  static final double KEPT = 1e-9;

  /** The same where a goal is met to rounding. */
  private static final double MET = 1e-12;

  /** Share of the size of the value that may be given up for goals that are met to rounding. */
  private static final double GIVEN_UP = 1e-7;

  /** Share of the bound of a goal below which its room is none. */
  private static final double USED_UP = 1e-7;

  /** A bound below this share of what misses are like is a slip of rounding itself. */
  private static final double SMALL = 1e-3;

  /** Share of the places on which sizes are read: a few may lie next to a pole. */
  private static final double USUAL = 0.9;

  private static final Seen NOTHING = new Seen(new double[0], Sight.nothing());

  private final View view;
  private final List<Aim> aims;
  private final int most;

  /** What misses of each goal are like in the box: by these they are compared with one another. */
  private final double[] sizes;

  /** What a goal asks for: by these it is judged whether it is kept. */
  private final double[] bounds;

  private final List<Seen> sample = new ArrayList<>();

  private double valueSize = 1;
  private int looks;
  private boolean cut;
  private Seen best = NOTHING;

  /** The best place at which all goals are met to rounding. */
  private Seen met = NOTHING;

  /** A place and what is seen from it. */
  static final class Seen {
    final double[] place;
    final Sight sight;

    Seen(double[] place, Sight sight) {
      this.place = place;
      this.sight = sight;
    }
  }

  /** The search has looked as often as it may. */
  static final class Spent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Spent() {
      super("looked as often as it may", null, false, false);
    }
  }

  Ledger(View view, List<Aim> aims, int most) {
    this.view = view;
    this.aims = List.copyOf(aims);
    this.most = most;
    sizes = new double[aims.size()];
    for (int goal = 0; goal < sizes.length; goal++) {
      sizes[goal] = aims.get(goal).size() > 0 ? aims.get(goal).size() : 1;
    }
    bounds = sizes.clone();
  }

  int goals() {
    return sizes.length;
  }

  /** Looks from places all over the box, from which sizes are read. */
  List<Seen> survey(List<double[]> places) {
    for (double[] place : places) {
      sample.add(new Seen(place.clone(), look(place)));
    }
    readSizes();
    best = NOTHING;
    met = NOTHING;
    sample.forEach(this::keepIfBetter);
    return List.copyOf(sample);
  }

  private void readSizes() {
    List<Sight> seen = sample.stream().map(one -> one.sight).filter(Sight::isThere).toList();
    if (seen.isEmpty()) {
      return;
    }
    double spread = spread(seen.stream().mapToDouble(Sight::value).toArray());
    double size = Math.abs(seen.get(0).value());
    valueSize = spread > 0 ? spread : size > 0 ? size : 1;
    for (int goal = 0; goal < sizes.length; goal++) {
      int one = goal;
      double own = spread(seen.stream().mapToDouble(sight -> sight.miss(one)).toArray());
      double bound = aims.get(goal).size();
      double larger = Math.max(own, bound);
      sizes[goal] = larger > 0 ? larger : 1;
      bounds[goal] = bound > 0 ? Math.max(bound, SMALL * sizes[goal]) : sizes[goal];
    }
  }

  /** The span of most of some numbers; 0 if there are none but those that stand for no end. */
  private static double spread(double[] numbers) {
    double[] sorted =
        Arrays.stream(numbers).filter(one -> Math.abs(one) < Sight.ENDLESS / 2).sorted().toArray();
    if (sorted.length == 0) {
      return 0;
    }
    int beyond = (int) Math.floor((1 - USUAL) / 2 * sorted.length);
    return sorted[sorted.length - 1 - beyond] - sorted[beyond];
  }

  /** Looks from a place. */
  Sight look(double[] place) {
    if (looks >= most) {
      cut = true;
      throw new Spent();
    }
    looks++;
    Sight sight = view.from(place.clone());
    keepIfBetter(new Seen(place.clone(), sight));
    return sight;
  }

  private void keepIfBetter(Seen seen) {
    if (isBetter(seen, best)) {
      best = seen;
    }
    if (keeps(seen.sight, MET)
        && (!met.sight.isThere() || seen.sight.value() < met.sight.value())) {
      met = seen;
    }
  }

  /** Whether a place is better than another. */
  boolean isBetter(Seen seen, Seen than) {
    if (!seen.sight.isThere() || !than.sight.isThere()) {
      return seen.sight.isThere() && !than.sight.isThere();
    }
    boolean keeps = keeps(seen.sight);
    if (keeps != keeps(than.sight)) {
      return keeps;
    }
    return keeps
        ? seen.sight.value() < than.sight.value()
        : missed(seen.sight) < missed(than.sight);
  }

  /** Whether all goals are kept. */
  boolean keeps(Sight sight) {
    return keeps(sight, KEPT);
  }

  private boolean keeps(Sight sight, double room) {
    if (!sight.isThere()) {
      return false;
    }
    for (int goal = 0; goal < sizes.length; goal++) {
      if (missed(sight, goal) * sizes[goal] > room * bounds[goal]) {
        return false;
      }
    }
    return true;
  }

  /** By how much all goals are missed, in their sizes. */
  double missed(Sight sight) {
    double sum = 0;
    for (int goal = 0; goal < sizes.length; goal++) {
      sum += missed(sight, goal);
    }
    return sum;
  }

  private double missed(Sight sight, int goal) {
    double signed = signed(sight, goal);
    return isOneValue(goal) ? Math.abs(signed) : Math.max(0, signed);
  }

  /** Miss or room of a goal in its size. */
  double signed(Sight sight, int goal) {
    return sight.miss(goal) / sizes[goal];
  }

  boolean isOneValue(int goal) {
    return aims.get(goal).isOneValue();
  }

  /** The value in its size. */
  double value(Sight sight) {
    return sight.value() / valueSize;
  }

  /** A place beside another; the place itself where nothing is seen there or the box ends. */
  Seen beside(Seen now, int coordinate, double difference) {
    double[] place = now.place.clone();
    place[coordinate] = Math.max(0, Math.min(1, place[coordinate] + difference));
    if (place[coordinate] == now.place[coordinate]) {
      return now;
    }
    Seen seen = new Seen(place, look(place));
    return seen.sight.isThere() ? seen : now;
  }

  boolean isUsedUp(Sight sight, int goal) {
    return Math.abs(sight.miss(goal)) <= USED_UP * bounds[goal];
  }

  Seen best() {
    return best;
  }

  Best report() {
    boolean close =
        met.sight.isThere()
            && met.sight.value() - best.sight.value() <= GIVEN_UP * Math.abs(valueSize);
    Seen told = close ? met : best;
    boolean[] kept = new boolean[sizes.length];
    boolean[] used = new boolean[sizes.length];
    boolean there = told.sight.isThere();
    for (int goal = 0; there && goal < used.length; goal++) {
      kept[goal] = missed(told.sight, goal) * sizes[goal] <= KEPT * bounds[goal];
      used[goal] = isUsedUp(told.sight, goal);
    }
    return new Best(told.place, there && keeps(told.sight), kept, used, looks, cut);
  }
}
