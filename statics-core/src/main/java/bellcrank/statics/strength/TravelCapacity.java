package bellcrank.statics.strength;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What gives first over a whole course: for each check, and for the device as a whole, the pose in
 * which it gives at the least multiple of the driving loads.
 *
 * <p>The course is looked at in {@link #STEPS} equal steps of its drive; round the worst of these
 * poses the worst one is searched.
 */
public final class TravelCapacity {

  /** Steps of the course that are looked at. */
  public static final int STEPS = 200;

  private final Course course;
  private final List<Foundation> foundations;
  private final Sizing sizing;
  private final Rules rules;
  private final Variation.Multiple driving;
  private final List<Worst> ranked;
  private final List<NotChecked> notChecked;
  private final Holding holding;

  private TravelCapacity(
      Course course,
      Sizing sizing,
      Rules rules,
      Variation.Multiple driving,
      List<Foundation> foundations) {
    this.course = course;
    this.sizing = sizing;
    this.rules = rules;
    this.driving = driving;
    this.foundations = List.copyOf(foundations);
    Driven driven = new Driven(course.device(), course.loadCase(), driving, foundations);
    CourseSearch search =
        new CourseSearch(course, driven, new Plan(course.device(), sizing, rules), STEPS);
    search.run();
    List<Worst> sorted = new ArrayList<>(search.worst());
    sorted.sort(Comparator.comparingDouble(one -> one.crossing().multiple()));
    ranked = List.copyOf(sorted);
    notChecked = List.copyOf(search.notChecked());
    holding = search.holding();
  }

  /**
   * The worst pose of one thing that gives.
   *
   * @param crossing what gives there
   * @param drive value of the drive in rad or m
   * @param share share of the course from its least to its greatest drive, 0 to 1
   */
  public record Worst(Crossing crossing, double drive, double share) {}

  /**
   * Searches a course, with the rules of the sizing's method.
   *
   * @param course the course with its case of loads
   * @param sizing sections, materials and details
   * @param driving the loads that grow
   * @return what gives, in order
   * @throws bellcrank.statics.device.ModelException if sizing or driving name what the device does
   *     not have
   */
  public static TravelCapacity of(Course course, Sizing sizing, Variation.Multiple driving) {
    return of(course, sizing, Rules.of(sizing.method()), driving, List.of());
  }

  /**
   * Searches a course.
   *
   * @param course the course with its case of loads
   * @param sizing sections, materials and details
   * @param rules rules of the method of the sizing
   * @param driving the loads that grow
   * @param foundations the ground under contact bases
   * @return what gives, in order
   * @throws bellcrank.statics.device.ModelException if sizing, driving or foundations name what the
   *     device does not have, or the rules are of another method
   */
  public static TravelCapacity of(
      Course course,
      Sizing sizing,
      Rules rules,
      Variation.Multiple driving,
      List<Foundation> foundations) {
    return new TravelCapacity(course, sizing, rules, driving, foundations);
  }

  /**
   * The course that was searched.
   *
   * @return with its device and case
   */
  public Course course() {
    return course;
  }

  /**
   * The loads that grow.
   *
   * @return as it was asked for
   */
  public Variation.Multiple driving() {
    return driving;
  }

  /**
   * What gives, each in its worst pose.
   *
   * @return in the order of the multiples; empty if nothing gives in any pose
   */
  public List<Worst> ranked() {
    return ranked;
  }

  /**
   * What gives first of all.
   *
   * @return the first; empty if nothing gives
   */
  public Optional<Worst> first() {
    return ranked.stream().findFirst();
  }

  /**
   * Checks that could not be made in some pose.
   *
   * @return parts and reasons, each told once
   */
  public List<NotChecked> notChecked() {
    return notChecked;
  }

  /**
   * What else is to be known, such as poses in which the device does not hold at all.
   *
   * @return clauses; may be empty
   */
  public List<String> remarks() {
    return holding.remarks();
  }

  /**
   * Why in some pose the device itself does not hold with a multiple of the driving loads that is
   * below all that is ranked: it may hold only with more of them or at no multiple at all, or that
   * was not decided.
   *
   * @param multiple the multiple, 0 or more
   * @return a clause; empty if it holds, or if its giving way is among what is ranked
   */
  public Optional<String> whyNotHeld(double multiple) {
    return holding.whyNot(multiple);
  }

  /**
   * What is in the loads: factors of the case, its dynamic factor, and whether the method wants
   * them.
   *
   * @return clauses, at least one
   */
  public List<String> loads() {
    return LoadWords.of(course.loadCase(), sizing.method());
  }

  /**
   * Capacity in one pose of the course.
   *
   * @param drive value of the drive in rad or m
   * @return what gives there
   */
  public Capacity capacity(double drive) {
    Pose pose = course.pose(drive);
    return Capacity.of(
        course.device(), course.loadCase(), pose, sizing, rules, driving, foundations);
  }

  /**
   * An answer where something gives, such as the pull at the winch.
   *
   * @param ask the answer that is wanted
   * @param worst one of the ranked
   * @return the answer of a balance
   */
  public Answer at(Ask ask, Worst worst) {
    return capacity(worst.drive()).at(ask, worst.crossing().multiple());
  }
}
