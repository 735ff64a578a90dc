package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.function.Function;

/** What came of a check. */
public sealed interface CheckResult {

  /**
   * The part that was to be checked.
   *
   * @return its name
   */
  String part();

  /**
   * What was to be checked.
   *
   * @return the name of the check; for a detail with a name of its own, that name comes first
   */
  String what();

  /**
   * A check that was made.
   *
   * @param part name of the part
   * @param what what was checked
   * @param place where the part is used most, in words; may be empty
   * @param demand what is demanded, in SI units, 0 or more
   * @param resistance what the part can give, in SI units, above 0
   * @param dimension kind of quantity of both
   * @param rule the rule that it was checked by
   * @param factor what the strength was divided by, for the material of the part
   * @param working writes the formula with its numbers, in given units
   */
  record Checked(
      String part,
      String what,
      String place,
      double demand,
      double resistance,
      Dimension dimension,
      Rule<?> rule,
      Factor factor,
      Function<UnitSystem, String> working)
      implements CheckResult {

    /**
     * Share of the resistance that is used.
     *
     * @return 0 or more; 1 is the limit
     */
    public double utilisation() {
      return demand / resistance;
    }

    /**
     * What margin is in the resistance.
     *
     * @return a clause such as {@code strength divided by 1.67: safety factor Ω on yielding}
     */
    public String margin() {
      return "strength divided by " + Amounts.plain(factor.value()) + ": " + factor.meaning();
    }

    /**
     * The formula with its numbers.
     *
     * @param units units to write in
     * @return one line
     */
    public String working(UnitSystem units) {
      return working.apply(units);
    }
  }

  /**
   * A check that could not be made; the others are not touched by it.
   *
   * @param part name of the part
   * @param what what was to be checked
   * @param why what is missing or open, a clause
   */
  record NotChecked(String part, String what, String why) implements CheckResult {}
}
