package bellcrank.statics.units;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the number in front of a unit: decimal, fraction, or whole number with a fraction. */
final class NumberText {
  /** A number as a part of larger patterns; it has no groups and never gives back what it took. */
  static final String NUMBER =
      "(?:[0-9]++(?: ++|-)[0-9]++/[0-9]++|[0-9]++/[0-9]++"
          + "|(?:[0-9]++(?:\\.[0-9]++)?+|\\.[0-9]++)(?:[eE][+-]?+[0-9]++)?+)";

  private static final Pattern FRACTION =
      Pattern.compile("(?:([0-9]++)(?: ++|-))?([0-9]++)/([0-9]++)");
  private static final Pattern NOT_ZERO = Pattern.compile("[1-9]");
  private static final Pattern EXPONENT = Pattern.compile("[eE]");

  private NumberText() {}

  /**
   * The value of text that matches {@link #NUMBER}; decimal digits are all kept.
   *
   * @param number the number
   * @param text the whole text, for the message
   */
  static BigDecimal value(String number, String text) {
    Matcher fraction = FRACTION.matcher(number);
    if (fraction.matches()) {
      return BigDecimal.valueOf(fraction(fraction, text));
    }
    double value = Double.parseDouble(number);
    String mantissa = EXPONENT.split(number, 2)[0];
    boolean zero = inRange(value, NOT_ZERO.matcher(mantissa).find(), text) == 0;
    // a zero may have an exponent that no decimal takes
    return zero ? BigDecimal.ZERO : new BigDecimal(number);
  }

  private static double fraction(Matcher fraction, String text) {
    String whole = fraction.group(1);
    double above = Double.parseDouble(fraction.group(2));
    double below = Double.parseDouble(fraction.group(3));
    if (below == 0) {
      throw new QuantityException(
          text,
          UnitMistake.shown(text) + " divides by zero",
          "write a fraction such as 1/2, its lower number not zero");
    }
    if (whole == null) {
      return above / below;
    }
    if (above >= below) {
      throw new QuantityException(
          text,
          "the fraction behind the whole number in " + UnitMistake.shown(text) + " is not below 1",
          "write a proper fraction such as 1 1/2");
    }
    return Double.parseDouble(whole) + above / below;
  }

  /** The value, unless it left the range of a double on either side. */
  static double inRange(double value, boolean notZero, String text) {
    if (Double.isInfinite(value) || (notZero && value == 0)) {
      throw outOfRange(value == 0 ? "small" : "large", text);
    }
    return value;
  }

  /** A number that a double cannot hold. */
  static QuantityException outOfRange(String size, String text) {
    return new QuantityException(
        text,
        UnitMistake.shown(text) + " is too " + size + " to be kept",
        "write zero or a size between about 1e-300 and 1e300");
  }
}
