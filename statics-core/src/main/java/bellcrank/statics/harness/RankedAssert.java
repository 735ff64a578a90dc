package bellcrank.statics.harness;

import bellcrank.statics.units.UnitSystem;

/** What can be asserted about what gives first. */
abstract class RankedAssert<S extends RankedAssert<S, A>, A> extends ClaimAssert<S, A> {

  private UnitSystem units = UnitSystem.SI;

  RankedAssert(A actual, Class<?> type) {
    super(actual, type);
  }

  abstract CapacityClaims claims(UnitSystem system);

  /**
   * Chooses the units of messages. They are SI unless others are chosen.
   *
   * @param chosen the units
   * @return this assertion
   */
  public S inUnits(UnitSystem chosen) {
    units = chosen;
    return myself;
  }

  /**
   * Asserts that a part is the first to give, by a check of strength or by slipping, tipping,
   * lifting or going slack. Of several that give together each is the first.
   *
   * @param part name of a member, joint or connection
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if there is no such part
   */
  public S firstToGiveWayIs(String part) {
    return hold(claims(units).firstToGiveWay(part));
  }

  /**
   * Asserts that a check of a part is the first to be reached, be it together with others.
   *
   * @param part name of a member, joint or connection
   * @param check name of the check, such as {@code working load limit}
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if there is no such part
   */
  public S firstToGiveWayIs(String part, String check) {
    return hold(claims(units).firstToGiveWay(part, check));
  }

  /**
   * Asserts that nothing that was checked gives below a multiple of the loads that grow, and that
   * the device itself can hold with them from their stated size (or from that multiple, if it is
   * below 1) on. What could not be checked is another question: {@link #checksEverything()}.
   *
   * @param multiple the multiple, 0 or more
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the multiple is negative or not finite
   */
  public S holdsUntilAtLeast(double multiple) {
    return hold(claims(units).holdsUntilAtLeast(multiple));
  }

  /**
   * Asserts that every check for which the sizing calls could be made.
   *
   * @return this assertion
   */
  public S checksEverything() {
    return hold(claims(units).checksEverything());
  }
}
