package bellcrank.statics.harness;

import bellcrank.statics.limits.Limits;

/**
 * Assertions about limits: as those about a device, but with the friction that these limits have.
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class LimitsAssert extends LimitedAssert<LimitsAssert, Limits> {

  LimitsAssert(Limits actual) {
    super(actual, LimitsAssert.class, Setup.of(actual));
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
