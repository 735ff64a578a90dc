package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.TravelCapacity;

/**
 * Where assertions about devices begin, in the style of AssertJ: {@code
 * assertThat(derrick).isHeld().answers("hand").isBetween("60 N", "80 N")}.
 *
 * <p>A failing assertion says in sentences what was expected, what was found and by how much it
 * misses, with units, and shows the forces on the free body concerned. A mistake in the test, such
 * as a part that the device does not have or a limit of another kind of quantity, is a {@link
 * bellcrank.statics.device.ModelException}. All can be described by {@code as}; several are
 * collected by {@code SoftAssertions.check}, for these classes are final.
 */
public final class StaticsAssertions {

  private StaticsAssertions() {}

  /**
   * Begins an assertion about a device.
   *
   * @param actual the device
   * @return the assertion, about its first case as drawn
   */
  public static DeviceAssert assertThat(Device actual) {
    return new DeviceAssert(actual);
  }

  /**
   * Begins an assertion about a balance.
   *
   * @param actual the balance
   * @return the assertion
   */
  public static BalanceAssert assertThat(Balance actual) {
    return new BalanceAssert(actual);
  }

  /**
   * Begins an assertion about limits.
   *
   * @param actual the limits
   * @return the assertion
   */
  public static LimitsAssert assertThat(Limits actual) {
    return new LimitsAssert(actual);
  }

  /**
   * Begins an assertion about a travel.
   *
   * @param actual a course, or a standstill
   * @return the assertion
   */
  public static CourseAssert assertThat(Travel actual) {
    return new CourseAssert(actual);
  }

  /**
   * Begins an assertion about what gives first in one pose.
   *
   * @param actual what gives, in order
   * @return the assertion
   */
  public static CapacityAssert assertThat(Capacity actual) {
    return new CapacityAssert(actual);
  }

  /**
   * Begins an assertion about what gives first over a course.
   *
   * @param actual what gives, in order
   * @return the assertion
   */
  public static TravelCapacityAssert assertThat(TravelCapacity actual) {
    return new TravelCapacityAssert(actual);
  }
}
