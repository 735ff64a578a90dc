package bellcrank.statics.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with its unit, and the two customary sums: feet with inches, pounds with ounces.
 */
final class QuantityText {
  private static final int LONGEST = 200;

  private static final Pattern SINGLE = Pattern.compile("(" + NumberText.NUMBER + ") *+(.*+)");

  /** The mark behind the feet may be tied to the inches by a hyphen: 4'-2". */
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(%1$s) *+(?:ft|['′])(?: *+|-)(%1$s) *+(?:in|''|[\"″])".formatted(NumberText.NUMBER));

  private static final Pattern POUNDS_AND_OUNCES =
      Pattern.compile("(%1$s) *+lb *+(%1$s) *+oz".formatted(NumberText.NUMBER));

  private static final Pattern SECOND_PART = Pattern.compile("[^0-9]*?(?: |['′])-?+[0-9].*+");
  private static final Pattern UNIT_START = Pattern.compile("[\\p{L}°%'′\"″].*+");

  private static final String UNBROKEN =
      "write a point as decimal sign and nothing between thousands, for example 1250.5";

  /** A number of a unit, without its sign. */
  private record Size(BigDecimal number, Unit unit) {}

  /** What a text says: its value in SI, and the unit in which it says so. */
  private record Written(double si, Unit unit) {}

  private QuantityText() {}

  static Quantity parse(String text, Dimension wanted) {
    return new Quantity(read(text, wanted, Optional.empty()).si(), wanted);
  }

  static Quantity parse(String text, Dimension wanted, UnitSystem bare) {
    return new Quantity(read(text, wanted, Optional.of(bare.unit(wanted))).si(), wanted);
  }

  static Unit unit(String text, Dimension wanted, UnitSystem bare) {
    return read(text, wanted, Optional.of(bare.unit(wanted))).unit();
  }

  private static Written read(String text, Dimension wanted, Optional<Unit> bare) {
    String plain = Spaces.plain(text);
    refuseHopeless(text, plain, wanted);
    boolean negative = plain.startsWith("-");
    String unsigned = negative || plain.startsWith("+") ? plain.substring(1).strip() : plain;
    Size size = size(unsigned, text, wanted, bare);
    double si = inSi(size, text);
    return new Written(negative ? -si : si, size.unit());
  }

  private static void refuseHopeless(String text, String plain, Dimension wanted) {
    String accepted = "write for example " + example(wanted);
    if (plain.isEmpty()) {
      throw new QuantityException(
          text, "there is no text where " + wanted.noun() + " is wanted", accepted);
    }
    if (plain.indexOf(',') >= 0) {
      throw new QuantityException(text, UnitMistake.shown(text) + " has a comma", UNBROKEN);
    }
    if (plain.length() > LONGEST) {
      throw new QuantityException(
          text, UnitMistake.shown(text) + " is too long for " + wanted.noun(), accepted);
    }
  }

  private static Size size(String unsigned, String text, Dimension wanted, Optional<Unit> bare) {
    Matcher feet = FEET_AND_INCHES.matcher(unsigned);
    if (feet.matches()) {
      return sum(feet, "ft", 12, "in", text, wanted);
    }
    Matcher pounds = POUNDS_AND_OUNCES.matcher(unsigned);
    if (pounds.matches()) {
      return sum(pounds, "lb", 16, "oz", text, wanted);
    }
    Matcher single = SINGLE.matcher(unsigned);
    if (!single.matches()) {
      throw new QuantityException(
          text,
          UnitMistake.shown(text) + " does not begin with a number",
          "write for example " + example(wanted));
    }
    BigDecimal value = NumberText.value(single.group(1), text);
    return new Size(value, unit(single.group(2), single.group(1), text, wanted, bare));
  }

  /** Adds in the smaller unit, of which the larger one is a whole number. */
  private static Size sum(
      Matcher parts, String large, int ratio, String small, String text, Dimension wanted) {
    checkedUnit(large, text, wanted);
    BigDecimal most = NumberText.value(parts.group(1), text);
    BigDecimal rest = NumberText.value(parts.group(2), text);
    BigDecimal sum = most.multiply(BigDecimal.valueOf(ratio)).add(rest);
    return new Size(sum, checkedUnit(small, text, wanted));
  }

  /** Rounds once, at the end: enough digits state every value in every unit. */
  private static double inSi(Size size, String text) {
    double si = size.unit().exactToSi(size.number()).doubleValue();
    return NumberText.inRange(si, size.number().signum() != 0, text);
  }

  private static Unit unit(
      String symbol, String number, String text, Dimension wanted, Optional<Unit> bare) {
    if (symbol.isEmpty() && (bare.isPresent() || wanted == Dimension.NUMBER)) {
      return bare.orElse(UnitList.PLAIN);
    }
    if (symbol.isEmpty()) {
      throw new QuantityException(
          text,
          number + " has no unit; " + wanted.noun() + " is wanted",
          "write for example " + number + " " + wanted.example());
    }
    if (symbol.charAt(0) >= '0' && symbol.charAt(0) <= '9') {
      throw new QuantityException(
          text, UnitMistake.shown(text) + " has a gap in its number", UNBROKEN);
    }
    if (SECOND_PART.matcher(symbol).matches()) {
      throw new QuantityException(
          text,
          UnitMistake.shown(text) + " has a second number",
          "only feet with inches (4 ft 2 in) and pounds with ounces (3 lb 8 oz) are added");
    }
    if (!UNIT_START.matcher(symbol).matches()) {
      throw new QuantityException(
          text,
          UnitMistake.shown(text) + " goes on after the number with what is no unit",
          "write for example " + example(wanted));
    }
    return checkedUnit(symbol, text, wanted);
  }

  /** The unit, with the whole text in the error if it is refused. */
  private static Unit checkedUnit(String symbol, String text, Dimension wanted) {
    try {
      return Unit.parse(symbol, wanted);
    } catch (QuantityException e) {
      throw e.about(text);
    }
  }

  private static String example(Dimension wanted) {
    return wanted == Dimension.NUMBER ? "0.35 or 35 %" : "15 " + wanted.example();
  }
}
