package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;
import java.util.stream.Collectors;

/** Assertions about a travel. */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class CourseAssert extends ClaimAssert<CourseAssert, Travel> {

  private UnitSystem units = UnitSystem.SI;

  CourseAssert(Travel actual) {
    super(actual, CourseAssert.class);
  }

  /**
   * Chooses the units of messages, and of limits that are stated without a unit. They are SI unless
   * others are chosen.
   *
   * @param chosen the units
   * @return this assertion
   */
  public CourseAssert inUnits(UnitSystem chosen) {
    units = chosen;
    return this;
  }

  /**
   * Asserts that the device can be driven, in one way only.
   *
   * @return this assertion
   */
  public CourseAssert isDriven() {
    return hold(wrong());
  }

  private Optional<Message> wrong() {
    if (!(actual instanceof Travel.Standstill still)) {
      return Optional.empty();
    }
    String motions =
        still.freedoms().stream().map(Freedom::words).collect(Collectors.joining("; "));
    return Optional.of(
        Message.of(
            "The device is expected to be driven over a course, but "
                + still.reason().words()
                + (motions.isEmpty() ? "" : ": " + motions)
                + "."));
  }

  /**
   * Goes on with how the answer to an ask changes over the course.
   *
   * @param ask the text of an ask that is answered by a number
   * @return an assertion about it in every pose
   * @throws ModelException if the text is no ask or names what the device does not have
   */
  public CurveAssert answers(String ask) {
    isDriven();
    Course course = (Course) actual;
    Ask checked = Setup.of(course.device()).ask(ask);
    return described(new CurveAssert(this, new CurveClaims(course, course.curve(checked), units)));
  }

  /**
   * Goes on with how the mechanical advantage changes over the course.
   *
   * @return an assertion about it in every pose
   * @throws ModelException if the device states no effort and resistance
   */
  public CurveAssert advantage() {
    return answers("advantage");
  }

  /** Refuses the travel of another device. */
  void requireDevice(Device device) {
    if (actual instanceof Course course && !course.device().equals(device)) {
      throw new ModelException(
          device.name(), "travel", "of " + course.device().name(), "one of this device");
    }
  }
}
