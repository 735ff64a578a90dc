package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.ground.Foundation;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * For which values of one unknown number an answer equals a target. The range is looked at in 240
 * steps, so two solutions nearer than a step to one another can be missed unless the answer bends
 * back between them. Solutions are found to 1e-12 of the range, those where the answer only touches
 * the target to about 1e-8 of it. Where an answer jumps over the target or goes to infinity is no
 * solution; nor is where there is no answer, as without balance. Forces are those of the balance,
 * also where a part that only pushes would have to pull; whether the device stands at a solution is
 * asked there with {@link bellcrank.statics.limits.Limits}.
 *
 * <p>Method: bracketing with inverse interpolation (R. P. Brent, Algorithms for Minimization
 * without Derivatives, 1973, chapters 3 to 5).
 */
public sealed interface Find {

  /**
   * There are solutions.
   *
   * @param values single solutions in ascending order
   * @param intervals whole intervals of solutions in ascending order
   */
  record At(List<Double> values, List<Interval> intervals) implements Find {

    /**
     * Copies the lists.
     *
     * @param values single solutions in ascending order
     * @param intervals whole intervals of solutions in ascending order
     */
    public At {
      values = List.copyOf(values);
      intervals = List.copyOf(intervals);
    }
  }

  /**
   * There is no solution in the range.
   *
   * @param nearest where the answer comes nearest to the target; empty if there is no answer in the
   *     whole range
   */
  record None(Optional<Miss> nearest) implements Find {}

  /** Every value in the range is a solution. */
  record Always() implements Find {}

  /**
   * Values all of which are solutions.
   *
   * @param from the least
   * @param to the greatest
   */
  record Interval(double from, double to) {}

  /**
   * A value that misses the target.
   *
   * @param value the value of the unknown
   * @param answer the answer there, in SI units
   */
  record Miss(double value, double answer) {}

  /**
   * Searches the devices of a family, as drawn. Asks that only limits answer are answered by them.
   *
   * @param family the device for a value of the unknown, such as one of {@link Unknown}; values for
   *     which it throws a {@link bellcrank.statics.device.ModelException} have no answer
   * @param from least value of the unknown
   * @param to greatest value, above the least
   * @param ask what is asked, answered by a number
   * @param target what the answer shall be, in SI units; angles count modulo a whole turn
   * @return where it is so
   * @throws bellcrank.statics.device.ModelException if a number is not finite or the range is
   *     empty, the ask is not answered by numbers or names what the device does not have, or no
   *     value makes a device
   */
  static Find of(DoubleFunction<Device> family, double from, double to, Ask ask, double target) {
    return of(family, from, to, ask, target, List.of());
  }

  /**
   * Searches the devices of a family, as drawn, on stated ground.
   *
   * @param family the device for a value of the unknown
   * @param from least value of the unknown
   * @param to greatest value, above the least
   * @param ask what is asked, answered by a number
   * @param target what the answer shall be, in SI units; angles count modulo a whole turn
   * @param foundations the ground under contact bases, which counts where limits answer
   * @return where it is so
   * @throws bellcrank.statics.device.ModelException as for {@link #of(DoubleFunction, double,
   *     double, Ask, double)}, or if a foundation is of no contact base
   */
  static Find of(
      DoubleFunction<Device> family,
      double from,
      double to,
      Ask ask,
      double target,
      List<Foundation> foundations) {
    return new FindSearch(
            "find",
            value -> {
              Device device = family.apply(value);
              return new FindSearch.Stand(
                  device,
                  FindSearch.loadCase(device, ask, device.cases().get(0)),
                  Pose.DRAWN,
                  foundations);
            },
            ask,
            target)
        .over(from, to);
  }

  /**
   * Searches the devices of a family, as drawn.
   *
   * @param family the device for a value of the unknown
   * @param from least value of the unknown
   * @param to greatest value, above the least
   * @param ask text of the ask, answered by a number
   * @param target what the answer shall be, in SI units; angles count modulo a whole turn
   * @return where it is so
   * @throws bellcrank.statics.device.ModelException as for {@link #of(DoubleFunction, double,
   *     double, Ask, double)}, or if the text is no ask
   */
  static Find of(DoubleFunction<Device> family, double from, double to, String ask, double target) {
    return of(family, from, to, Ask.parse(ask), target);
  }

  /**
   * Searches a course.
   *
   * @param course the course, whose loads count unless the ask names a case
   * @param ask what is asked, answered by a number
   * @param target what the answer shall be, in SI units; angles count modulo a whole turn
   * @return values of the drive at which it is so
   * @throws bellcrank.statics.device.ModelException if the target is not finite, the course has no
   *     length, or the ask is not answered by numbers or names what the device does not have
   */
  static Find over(Course course, Ask ask, double target) {
    return new FindSearch(
            course.device().name(),
            at ->
                new FindSearch.Stand(
                    course.device(),
                    FindSearch.loadCase(course.device(), ask, course.loadCase()),
                    course.pose(at),
                    List.of()),
            ask,
            target)
        .over(course.least().drive(), course.greatest().drive());
  }

  /**
   * Searches a course.
   *
   * @param course the course
   * @param ask text of the ask, answered by a number
   * @param target what the answer shall be, in SI units; angles count modulo a whole turn
   * @return values of the drive at which it is so
   * @throws bellcrank.statics.device.ModelException as for {@link #over(Course, Ask, double)}, or
   *     if the text is no ask
   */
  static Find over(Course course, String ask, double target) {
    return over(course, Ask.parse(ask), target);
  }
}
