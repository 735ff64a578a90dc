package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * What a file wants found: for which values of one unknown an answer equals a target.
 *
 * @param name name of the search
 * @param unknown the unknown
 * @param range where it is looked for; empty for the drive, which is looked for over its travel
 * @param ask what is asked
 * @param target what the answer shall be
 * @param expected what the file expects to be found
 */
public record FindPlan(
    String name,
    FindUnknown unknown,
    Optional<Range> range,
    Ask ask,
    Quantity target,
    Optional<Values> expected) {

  /**
   * Checks the name and that there is a range where one is needed.
   *
   * @param name name of the search
   * @param unknown the unknown
   * @param range where it is looked for; empty for the drive
   * @param ask what is asked
   * @param target what the answer shall be
   * @param expected what the file expects to be found
   * @throws ModelException if the name is none, or the range is missing or too much
   */
  public FindPlan {
    Ask.of(name);
    if (range.isPresent() == unknown instanceof FindUnknown.Driven) {
      throw new ModelException(
          name,
          "from",
          range.isPresent() ? "a range" : "no range",
          "a range, but none for the drive, which is looked for over its travel");
    }
  }

  /** Checks that a device can be searched so; what cannot is told with the key as field. */
  void check(Device device, Optional<TravelPlan> travel) {
    ask.check(device);
    if (unknown instanceof FindUnknown.Driven && travel.isEmpty()) {
      throw new ModelException(name, "drive", "no travel", "a file with the keys drive and travel");
    }
    unknown.family(device);
  }

  /**
   * Where an unknown is looked for.
   *
   * @param from least value, in SI units
   * @param to greatest value, above the least
   */
  public record Range(double from, double to) {

    /**
     * Checks the ends.
     *
     * @param from least value, in SI units
     * @param to greatest value, above the least
     * @throws ModelException if the range is empty or an end is not finite
     */
    public Range {
      from = from + 0.0; // no negative zero, which no file can state
      to = to + 0.0;
      if (!(from < to) || !Double.isFinite(from) || !Double.isFinite(to)) {
        throw new ModelException("find", "to", to, "a number above from");
      }
    }
  }

  /**
   * Values that a file expects to be found, and no others.
   *
   * @param values the values in ascending order; empty if nothing is to be found
   * @param digits significant digits to which they must hold, in their own units, 1 to 15; 0 if
   *     there are no values
   * @param source where they come from
   */
  public record Values(List<Expected.Amount> values, int digits, Optional<String> source) {

    /**
     * Checks the fields.
     *
     * @param values the values in ascending order
     * @param digits significant digits to which they must hold
     * @param source where they come from
     * @throws ModelException if the values do not ascend, or the digits are out of range
     */
    public Values {
      values = List.copyOf(values);
      source = FreeText.check("source", source);
      if (values.isEmpty() ? digits != 0 : digits < 1 || digits > Expectation.MOST_DIGITS) {
        throw new ModelException(
            "find",
            "digits",
            digits,
            values.isEmpty() ? "no digits, since there are no values" : "1 to 15");
      }
      for (int i = 1; i < values.size(); i++) {
        if (!(values.get(i - 1).quantity().si() < values.get(i).quantity().si())) {
          throw new ModelException(
              "find", "values", values.get(i).quantity().si(), "values that ascend");
        }
      }
    }
  }
}
