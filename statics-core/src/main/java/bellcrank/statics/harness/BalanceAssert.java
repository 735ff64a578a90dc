package bellcrank.statics.harness;

import bellcrank.statics.equilibrium.Balance;

/** Assertions about a balance, in which one-sided and rough parts count as holding. */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class BalanceAssert extends SetupAssert<BalanceAssert, Balance> {

  BalanceAssert(Balance actual) {
    super(actual, BalanceAssert.class, Setup.of(actual));
  }

  /**
   * Asserts that the device is in balance, whatever the size and direction of its loads, and that
   * no part has to give what it cannot.
   *
   * @return this assertion
   */
  public BalanceAssert isHeld() {
    return hold(new StandingClaims(setup()).held());
  }

  /**
   * Asserts that the device is in balance under just these loads, be it on a free motion.
   *
   * @return this assertion
   */
  public BalanceAssert canRest() {
    return hold(new StandingClaims(setup()).canRest());
  }

  /**
   * Asserts that the device is not in balance, or only with what its parts cannot give.
   *
   * @return this assertion
   */
  public BalanceAssert givesWay() {
    return hold(new StandingClaims(setup()).givesWay());
  }
}
