package bellcrank.statics.strength;

import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.internal.Peak;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.TravelCapacity.Worst;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Finds for everything that may give the pose of a course in which it gives first. At a step where
 * a check is not used up at the least multiple known for it, nothing is searched: one look is
 * enough.
 */
final class CourseSearch {

  private final Course course;
  private final Driven driven;
  private final Plan plan;
  private final int steps;
  private final double from;
  private final double to;

  /** Room for one mixed state, made with the first pose. */
  private final List<CarriedForces> room = new ArrayList<>();

  private final List<Worst> worst = new ArrayList<>();
  private final Set<NotChecked> notChecked = new LinkedHashSet<>();
  private final Set<String> remarks = new LinkedHashSet<>();

  CourseSearch(Course course, Driven driven, Plan plan, int steps) {
    this.course = course;
    this.driven = driven;
    this.plan = plan;
    this.steps = steps;
    from = course.least().drive();
    to = course.greatest().drive();
    notChecked.addAll(plan.missing());
  }

  List<Worst> worst() {
    return worst;
  }

  /** What is to be said of poses in which the device does not hold, each told once. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  List<NotChecked> notChecked() {
    return List.copyOf(notChecked);
  }

  private double drive(int step) {
    return step == steps ? to : from + (to - from) * step / steps;
  }

  private PoseForces forces(double drive) {
    PoseForces forces = driven.forces(course.pose(drive), plan.needs());
    if (room.isEmpty()) {
      room.add(forces.none().empty(plan.needs()));
    }
    return forces;
  }

  void run() {
    int all = plan.checkings().size();
    double[] least = new double[all + 1];
    int[] place = new int[all + 1];
    java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int step = 0; step <= steps; step++) {
      PoseForces forces = forces(drive(step));
      Holding.remarkOfSome(forces).ifPresent(remarks::add);
      for (int k = 0; k <= all; k++) {
        double here = multiple(k, forces, least[k]);
        if (here < least[k]) {
          least[k] = here;
          place[k] = step;
        }
      }
    }
    for (int k = 0; k <= all; k++) {
      if (least[k] < Double.POSITIVE_INFINITY) {
        refine(k, least[k], place[k]);
      }
    }
  }

  /**
   * The multiple of one thing in a pose; the last one is the device that gives way.
   *
   * @param known a multiple that is of interest only if this one is less
   */
  private double multiple(int k, PoseForces forces, double known) {
    if (k == plan.checkings().size()) {
      return forces.end().map(at -> Math.max(0, at.value())).orElse(Double.POSITIVE_INFINITY);
    }
    Checking<?> checking = plan.checkings().get(k);
    CrossingSearch search = new CrossingSearch(checking, forces, room.get(0));
    Optional<String> whyNot = search.whyNot();
    if (whyNot.isPresent()) {
      notChecked.add(new NotChecked(checking.part(), checking.what(), whyNot.get()));
      return Double.POSITIVE_INFINITY;
    }
    if (known < Double.POSITIVE_INFINITY && !search.isUsedUpAt(known)) {
      return known;
    }
    OptionalDouble multiple = search.multiple();
    if (multiple.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Optional<String> beyond = search.whyNotBeyond(multiple.getAsDouble());
    if (beyond.isPresent()) {
      notChecked.add(new NotChecked(checking.part(), checking.what(), beyond.get()));
      return Double.POSITIVE_INFINITY;
    }
    return multiple.getAsDouble();
  }

  /** Searches between the neighbours of the worst step. */
  private void refine(int k, double known, int step) {
    double low = drive(Math.max(0, step - 1));
    double high = drive(Math.min(steps, step + 1));
    double drive = drive(step);
    double multiple = known;
    if (high > low && known > 0) {
      double found =
          Peak.of(at -> 1 / multiple(k, forces(at), Double.POSITIVE_INFINITY), low, high);
      double there = multiple(k, forces(found), Double.POSITIVE_INFINITY);
      if (there < known) {
        drive = found;
        multiple = there;
      }
    }
    PoseForces forces = forces(drive);
    double share = to > from ? (drive - from) / (to - from) : 0;
    Optional<Crossing> crossing =
        k == plan.checkings().size()
            ? forces.end().map(Crossing.GivesWay::new)
            : new CrossingSearch(plan.checkings().get(k), forces, room.get(0)).crossing(multiple);
    if (crossing.isPresent()) {
      worst.add(new Worst(crossing.get(), drive, share));
    }
  }
}
