package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.CourseEnd;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Rest;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.motion.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What happens to a device over its travel in one case.
 *
 * @param plan how it is driven
 * @param loadCase the case
 * @param travel its course, or why there is none
 * @param curves how each answer changes; none without a course
 * @param rows answers at even steps and at both ends; none without a course
 * @param rests where it rests by itself; empty if that is not asked, or without a course
 */
public record TravelAnswer(
    TravelPlan plan,
    LoadCase loadCase,
    Travel travel,
    List<Curve> curves,
    List<Row> rows,
    Optional<List<Rest.Place>> rests) {

  /** Share of the whole way that is rounding. */
  private static final double ROUNDING = 1e-12;

  /** Share of the way that an account of work keeps off a dead centre. */
  private static final double SHORT_OF = 0.05;

  /** Share of a step below which two rows are one. */
  private static final double SAME = 1e-6;

  /**
   * Copies the lists.
   *
   * @param plan how it is driven
   * @param loadCase the case
   * @param travel its course, or why there is none
   * @param curves how each answer changes
   * @param rows answers at even steps and at both ends
   * @param rests where it rests by itself
   */
  public TravelAnswer {
    curves = List.copyOf(curves);
    rows = List.copyOf(rows);
    rests = rests.map(List::copyOf);
  }

  /**
   * The answers at one place of the way.
   *
   * @param drive value of the drive, in rad or m from the drawn pose
   * @param answers for each curve its answer
   */
  public record Row(double drive, List<Answer> answers) {

    /**
     * Copies the list.
     *
     * @param drive value of the drive, in rad or m from the drawn pose
     * @param answers for each curve its answer
     */
    public Row {
      answers = List.copyOf(answers);
    }
  }

  /**
   * Follows the device of a file in one case.
   *
   * @param file the file
   * @param loadCase a case of its device
   * @return the answers; empty if the file states no drive
   */
  public static Optional<TravelAnswer> of(DeviceFile file, LoadCase loadCase) {
    return file.travel().map(plan -> of(file, plan, loadCase));
  }

  private static TravelAnswer of(DeviceFile file, TravelPlan plan, LoadCase loadCase) {
    Device device = file.device();
    Travel travel =
        Travel.of(device, loadCase, plan.drive(), plan.from(), plan.to(), plan.meetings());
    if (!(travel instanceof Course course)) {
      return new TravelAnswer(plan, loadCase, travel, List.of(), List.of(), Optional.empty());
    }
    List<Ask> asks = plan.curves().isEmpty() ? usual(device, plan.drive()) : plan.curves();
    List<Curve> curves = asks.stream().map(course::curve).toList();
    List<Row> rows = new ArrayList<>();
    for (double drive : drives(plan, course)) {
      Balance balance = Balance.of(device, loadCase, course.pose(drive));
      Limits limits = Limits.of(device, loadCase, course.pose(drive), List.of());
      rows.add(
          new Row(
              drive,
              asks.stream()
                  .map(ask -> Limits.decide(ask) ? limits.answer(ask) : balance.answer(ask))
                  .toList()));
    }
    Optional<List<Rest.Place>> rests =
        file.inquiries().rests() ? Optional.of(Rest.over(course)) : Optional.empty();
    return new TravelAnswer(plan, loadCase, travel, curves, rows, rests);
  }

  /**
   * Whether a curve goes on beyond an extreme towards an end of the way where it has no value, as a
   * ratio does that has no bound at a dead centre.
   *
   * @param curve a curve of these
   * @param extreme its least or greatest value
   * @return whether the extreme is the last value before such an end
   */
  boolean isOpen(Curve curve, Curve.Sample extreme) {
    int last = curve.samples().size() - 1;
    double first = rows.get(0).drive();
    double end = rows.get(rows.size() - 1).drive();
    boolean begins = extreme.equals(curve.samples().get(0)) && extreme.drive() > first;
    return begins || (extreme.equals(curve.samples().get(last)) && extreme.drive() < end);
  }

  /**
   * The account of work over the way, short of dead centres, near which efforts change too quickly
   * to be added up well.
   *
   * @return the work; empty without a course, where an effort is not told on the way, or where
   *     neither efforts nor loads do any
   */
  Optional<Account> account() {
    if (!(travel instanceof Course course)) {
      return Optional.empty();
    }
    double way = course.greatest().drive() - course.least().drive();
    double from = course.least().drive() + SHORT_OF * way * deadCentre(course.least());
    double to = course.greatest().drive() - SHORT_OF * way * deadCentre(course.greatest());
    return course
        .work(from, to)
        .filter(work -> work.effort() != 0 || work.loads() != 0)
        .map(work -> new Account(from, to, work));
  }

  private static int deadCentre(CourseEnd end) {
    return end.why() == CourseEnd.Why.DEAD_CENTRE ? 1 : 0;
  }

  /**
   * An account of work.
   *
   * @param from value of the drive where it begins, in rad or m
   * @param to value of the drive where it ends
   * @param work the work between
   */
  record Account(double from, double to, Work work) {}

  /** What is sought, the advantage, and what a driving rope, strut or screw carries. */
  private static List<Ask> usual(Device device, Drive drive) {
    List<Ask> asks = new ArrayList<>();
    if (drive instanceof Drive.Length length) {
      asks.add(Ask.of(length.connection(), Measure.TENSION));
    }
    for (Sought sought : device.sought()) {
      asks.add(Ask.of(sought.name()));
    }
    if (device.advantage().isPresent()) {
      asks.add(Ask.of(new Subject.Advantage(), Measure.ACTUAL));
      asks.add(Ask.of(new Subject.Advantage(), Measure.IDEAL));
    }
    return asks;
  }

  private static List<Double> drives(TravelPlan plan, Course course) {
    double least = course.least().drive();
    double greatest = course.greatest().drive();
    double way = plan.to() - plan.from();
    double same = SAME * way / plan.steps();
    List<Double> drives = new ArrayList<>();
    drives.add(least);
    for (int k = 1; k < plan.steps(); k++) {
      double drive = plan.from() + way * k / plan.steps();
      drive = Math.abs(drive) < ROUNDING * way ? 0 : drive;
      if (drive > least + same && drive < greatest - same) {
        drives.add(drive);
      }
    }
    if (greatest > least) {
      drives.add(greatest);
    }
    return drives;
  }
}
