package bellcrank.statics.harness;

import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;

/**
 * Assertions about limits: as those about a device, but with the friction that these limits have.
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class LimitsAssert extends LimitedAssert<LimitsAssert, Limits> {

  LimitsAssert(Limits actual) {
    super(actual, LimitsAssert.class, Setup.of(actual));
  }

  /**
   * Chooses what grows until something gives way first.
   *
   * @param loads names of given loads, at least one
   * @return this assertion
   */
  public LimitsAssert asLoadsGrow(String... loads) {
    return asItVaries(Variation.of(loads));
  }

  /**
   * Asserts that a part is among the first to give way, as what {@link #asLoadsGrow} or {@link
   * #asItVaries} chose grows.
   *
   * @param part name of the connection that slips, tips, lifts or goes slack
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if there is no such connection
   */
  public LimitsAssert firstToGiveWayIs(String part) {
    return hold(new LimitClaims(setup(), growing()).firstToGiveWay(part));
  }
}
