package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.internal.Parabolas;
import bellcrank.statics.motion.internal.Peak;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.TravelCapacity.Worst;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Finds for everything that may give the pose of a course in which it gives first. At a step where
 * a check is not used up at the least multiple known for it, nothing is searched: one look is
 * enough.
 */
final class CourseSearch {

  /** Share of a step that is a little way in from an end. */
  private static final double NEXT_TO = 1e-4;

  /** A multiple that is lower by less than this share of it is the same. */
  private static final double SAME = 1e-12;

  /** At one of so many steps it is asked whether the device holds at all. */
  private static final int ASKED = 50;

  private final Course course;
  private final Driven driven;
  private final Plan plan;
  private final int steps;
  private final double from;
  private final double to;
  private final CourseForces forces;
  private final CarriedForces mixed;

  private final List<Worst> worst = new ArrayList<>();
  private final Set<NotChecked> notChecked = new LinkedHashSet<>();
  private final Holding holding = Holding.inSomePoses();

  CourseSearch(Course course, Driven driven, Plan plan, int steps) {
    this.course = course;
    this.driven = driven;
    this.plan = plan;
    this.steps = steps;
    from = course.least().drive();
    to = course.greatest().drive();
    forces = new CourseForces(course, driven, plan.needs());
    mixed = forces.room();
    notChecked.addAll(plan.missing());
  }

  List<Worst> worst() {
    return worst;
  }

  /** What is to be said of poses in which the device does not hold. */
  Holding holding() {
    return holding;
  }

  List<NotChecked> notChecked() {
    return List.copyOf(notChecked);
  }

  private double drive(int step) {
    return step == steps ? to : from + (to - from) * step / steps;
  }

  void run() {
    int all = plan.checkings().size();
    double[] least = new double[all + 1];
    int[] place = new int[all + 1];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int step : coarseToFine(steps)) {
      PoseForces here = forces.at(drive(step));
      for (int k = 0; k <= all; k++) {
        double multiple = multiple(k, here, least[k]);
        if (isLess(multiple, least[k])) {
          least[k] = multiple;
          place[k] = step;
        }
      }
      boolean asks = here.limit().isPresent() || step % ASKED == 0 || step == steps;
      if (asks) {
        holding.add(forces.limit(here));
      }
    }
    List<Found> found = new ArrayList<>();
    for (int k = 0; k <= all; k++) {
      if (least[k] < Double.POSITIVE_INFINITY) {
        found.add(new Found(k, least[k], place[k], drive(place[k])));
      }
    }
    tell(found);
  }

  /** The least multiple of one thing, its step, and the value of the drive where it is. */
  private record Found(int which, double multiple, int step, double drive) {}

  /** Those with the same worst step are looked at together, as long as forces are read there. */
  private void tell(List<Found> found) {
    List<Found> refined = new ArrayList<>();
    for (Found one : sorted(found, Comparator.comparingInt(Found::step))) {
      refined.add(refine(one));
    }
    Map<Integer, Worst> told = new TreeMap<>();
    for (Found one : sorted(refined, Comparator.comparingDouble(Found::drive))) {
      double share = to > from ? (one.drive() - from) / (to - from) : 0;
      crossing(one)
          .ifPresent(crossing -> told.put(one.which(), new Worst(crossing, one.drive(), share)));
    }
    worst.addAll(told.values());
  }

  private static List<Found> sorted(List<Found> all, Comparator<Found> by) {
    List<Found> sorted = new ArrayList<>(all);
    sorted.sort(by);
    return sorted;
  }

  /**
   * All steps, those far apart first: so a low multiple is known early, and in most of the others
   * one look tells that they are no worse.
   */
  static int[] coarseToFine(int steps) {
    int[] order = new int[steps + 1];
    int count = 1;
    for (int stride = Integer.highestOneBit(Math.max(1, steps)); stride > 0; stride /= 2) {
      for (int step = stride; step <= steps; step += 2 * stride) {
        order[count++] = step;
      }
    }
    return order;
  }

  private static boolean isLess(double multiple, double known) {
    return multiple < (known < Double.POSITIVE_INFINITY ? known * (1 - SAME) : known);
  }

  /**
   * The multiple of one thing in a pose; the last one is the device that gives way.
   *
   * @param known a multiple that is of interest only if this one is less
   */
  private double multiple(int k, PoseForces here, double known) {
    if (k == plan.checkings().size()) {
      return here.farthest();
    }
    Checking<?> checking = plan.checkings().get(k);
    CrossingSearch search = new CrossingSearch(checking, here, mixed);
    if (search.isKeptUpTo(known * (1 - SAME))) {
      return known;
    }
    if (search.isOpen()) {
      Optional<String> whyNot = search.whyNot();
      if (whyNot.isPresent()) {
        notChecked.add(new NotChecked(checking.part(), checking.what(), whyNot.get()));
        return Double.POSITIVE_INFINITY;
      }
    }
    OptionalDouble multiple = search.multiple(known);
    if (multiple.isEmpty() || !isLess(multiple.getAsDouble(), known)) {
      return known;
    }
    Optional<String> beyond = search.whyNotBeyond(multiple.getAsDouble());
    if (beyond.isPresent()) {
      notChecked.add(new NotChecked(checking.part(), checking.what(), beyond.get()));
      return Double.POSITIVE_INFINITY;
    }
    return multiple.getAsDouble();
  }

  /** Searches between the neighbours of the worst step. */
  private Found refine(Found worst) {
    int k = worst.which();
    int step = worst.step();
    double known = worst.multiple();
    double low = drive(Math.max(0, step - 1));
    double high = drive(Math.min(steps, step + 1));
    if (high > low && known > 0 && !isLeastAtEnd(k, known, step) && !isFlat(k, known, low, high)) {
      double drive = worst.drive();
      double found =
          drive > low && drive < high
              ? Parabolas.top(at -> 1 / there(k, at), low, drive, high)
              : Peak.of(at -> 1 / there(k, at), low, high);
      double there = there(k, found);
      return there < known ? new Found(k, there, step, found) : worst;
    }
    return worst;
  }

  /** At an end of the course: whether it gets no worse a little way in. */
  private boolean isLeastAtEnd(int k, double known, int step) {
    double inwards = (to - from) / steps * NEXT_TO;
    return (step == 0 && !isLess(there(k, from + inwards), known))
        || (step == steps && !isLess(there(k, to - inwards), known));
  }

  /** Whether it is the same at the neighbours, as a force that does not change on the way. */
  private boolean isFlat(int k, double known, double low, double high) {
    return !isLess(known, there(k, low)) && !isLess(known, there(k, high));
  }

  private double there(int k, double at) {
    PoseForces here = k == plan.checkings().size() ? forces.at(at) : forces.alone(at);
    return multiple(k, here, Double.POSITIVE_INFINITY);
  }

  private Optional<Crossing> crossing(Found worst) {
    if (worst.which() == plan.checkings().size()) {
      Optional<Limit> limit = driven.limit(course.pose(worst.drive()));
      return PoseForces.end(limit).map(Crossing.GivesWay::new);
    }
    Checking<?> checking = plan.checkings().get(worst.which());
    PoseForces here = forces.alone(worst.drive());
    return new CrossingSearch(checking, here, mixed).crossing(worst.multiple());
  }
}
