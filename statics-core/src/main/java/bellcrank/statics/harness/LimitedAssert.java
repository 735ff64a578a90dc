package bellcrank.statics.harness;

import bellcrank.statics.limits.Variation;
import java.util.Optional;

/** What can be asserted about how a device stands and where it gives way. */
abstract class LimitedAssert<S extends LimitedAssert<S, A>, A> extends SetupAssert<S, A> {

  private Variation growing = Variation.ofAppliedLoads();

  LimitedAssert(A actual, Class<?> type, Setup setup) {
    super(actual, type, setup);
  }

  Variation growing() {
    return growing;
  }

  /**
   * Chooses what is varied until something gives way first. All loads but weights grow unless
   * another variation is chosen.
   *
   * @param variation loads that grow, or a load that moves
   * @return this assertion
   */
  public S asItVaries(Variation variation) {
    growing = variation;
    return myself;
  }

  /**
   * Asserts that the device holds, whatever of its possible states it is in, with something to
   * spare.
   *
   * @return this assertion
   */
  public S isHeld() {
    return hold(new StandingClaims(setup()).held());
  }

  /**
   * Asserts that there is a state in which the device rests, be it one that only a squeeze from
   * before makes, or one with nothing to spare.
   *
   * @return this assertion
   */
  public S canRest() {
    return hold(new StandingClaims(setup()).canRest());
  }

  /**
   * Asserts that the device does not hold: it slips, tips, lifts off, goes slack or moves.
   *
   * @return this assertion
   */
  public S givesWay() {
    return hold(new StandingClaims(setup()).givesWay());
  }

  /**
   * Asserts that the device can hold with one load from its stated size up to a multiple of it.
   *
   * @param load name of a given load
   * @param multiple the multiple
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if there is no such load, or the multiple is
   *     not finite
   */
  public S holdsUntilAtLeast(String load, double multiple) {
    return holdsUntilAtLeast(Variation.of(load), multiple);
  }

  /**
   * Asserts that the device can hold up to a value of a variation: with loads from their stated
   * size (or from that value, if it is below 1), with a load that moves from distance 0.
   *
   * @param variation what is varied
   * @param value a multiple, or a distance in m
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the variation names what the device does not
   *     have, the value is not finite or lies beyond the line
   */
  public S holdsUntilAtLeast(Variation variation, double value) {
    return hold(new LimitClaims(setup(), variation).holdsUntilAtLeast(value));
  }

  /**
   * Asserts that no contact slides and no rope slips round its post up to a value of a variation.
   * Where the device gives way otherwise before, such as by tipping, nothing has slipped, so this
   * holds; {@link #holdsUntilAtLeast(Variation, double)} says more.
   *
   * @param variation what is varied
   * @param value a multiple, or a distance in m
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the variation names what the device does not
   *     have, or the value is not finite
   */
  public S slipsNotBefore(Variation variation, double value) {
    return hold(new LimitClaims(setup(), variation).slipsNotBefore(Optional.empty(), value));
  }

  /**
   * Asserts that a part does not slip up to a value of a variation.
   *
   * @param part name of a contact, base or wrap
   * @param variation what is varied
   * @param value a multiple, or a distance in m
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the part or the variation names what the
   *     device does not have, or the value is not finite
   */
  public S slipsNotBefore(String part, Variation variation, double value) {
    return hold(new LimitClaims(setup(), variation).slipsNotBefore(Optional.of(part), value));
  }
}
