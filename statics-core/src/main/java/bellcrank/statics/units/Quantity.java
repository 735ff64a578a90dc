package bellcrank.statics.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number with its kind of quantity, kept in SI.
 *
 * <p>Text forms: {@code 15 lbf}, {@code -3.5kN}, {@code 4.20e3 N}, {@code 1/2 in}, {@code 1 1/2
 * in}, {@code 3-1/2 in}, {@code 4 ft 2 in}, {@code 4' 2 1/2"}, {@code 3 lb 8 oz}, {@code 30°},
 * {@code 35 %}. A leading sign belongs to all parts. The decimal sign is the point; there are no
 * thousands separators.
 *
 * @param si the value in the SI unit of the dimension (m, rad, N, kg, N·m, N/m, Pa, m/s², N·m/rad,
 *     m², m³, m⁴, or none), any sign, finite; a negative zero becomes zero
 * @param dimension the kind of quantity
 */
public record Quantity(double si, Dimension dimension) {
  /** Most digits that a double holds for certain. */
  private static final int MOST_DIGITS = 15;

  /**
   * Checks the components.
   *
   * @param si the value in SI, finite; a negative zero becomes zero
   * @param dimension the kind of quantity
   * @throws QuantityException if the value is not finite
   */
  public Quantity {
    if (!Double.isFinite(si)) {
      throw new QuantityException(
          Double.toString(si),
          si + " is no value of " + dimension.noun(),
          "give a finite number in SI");
    }
    // a negative zero would print and compare differently from zero
    si = si + 0.0;
  }

  /**
   * Reads a quantity that carries its own unit; only a plain number goes without.
   *
   * @param text for example {@code 15 lbf} or {@code 4 ft 2 in}
   * @param wanted the kind of quantity it must be
   * @return the quantity
   * @throws QuantityException if the text is empty, has no unit, measures something else, is not
   *     fully readable, or lies outside the range of a double
   */
  public static Quantity parse(String text, Dimension wanted) {
    return QuantityText.parse(text, wanted);
  }

  /**
   * Reads a quantity whose unit may be left out.
   *
   * @param text for example {@code 15 lbf}, or {@code 15} in the unit that the system names
   * @param wanted the kind of quantity it must be
   * @param bare the units that bare numbers are in
   * @return the quantity
   * @throws QuantityException if the text is empty, measures something else, is not fully readable,
   *     or lies outside the range of a double
   */
  public static Quantity parse(String text, Dimension wanted, UnitSystem bare) {
    return QuantityText.parse(text, wanted, bare);
  }

  /**
   * Tells the unit in which a quantity is written: of a sum the smaller one ({@code in} for {@code
   * 4 ft 2 in}, {@code oz} for {@code 3 lb 8 oz}), of a bare number the one that the system names.
   *
   * @param text for example {@code 15 lbf} or {@code 15}
   * @param wanted the kind of quantity it must be
   * @param bare the units that bare numbers are in
   * @return the unit of the last number in the text
   * @throws QuantityException if {@link #parse(String, Dimension, UnitSystem)} refuses the text
   */
  public static Unit unitOf(String text, Dimension wanted, UnitSystem bare) {
    return QuantityText.unit(text, wanted, bare);
  }

  /**
   * Writes the value in a unit, rounded half up to significant digits, with trailing zeros kept:
   * {@code 1600 N}, {@code 0.250 m}, {@code 12300 N}. Rounded values from 1e-4 to below 1e7 are
   * written plainly, others as {@code 1.23e8 N}; zero is always {@code 0}. The text can be read
   * again by {@link #parse(String, Dimension)} unless the rounded number in that unit is larger
   * than any double.
   *
   * @param unit the unit to write in; its dimension must be the quantity's
   * @param digits significant digits, 1 to 15, bounds included
   * @return number, one space, symbol; the number alone for the plain number
   * @throws QuantityException if the unit measures something else or digits are out of range
   */
  public String format(Unit unit, int digits) {
    if (unit.dimension() != dimension) {
      throw UnitMistake.mismatch(unit.symbol(), unit, dimension);
    }
    if (digits < 1 || digits > MOST_DIGITS) {
      throw new QuantityException(
          Integer.toString(digits),
          digits + " significant digits cannot be written",
          "give 1 to " + MOST_DIGITS);
    }
    // the binary tail goes first, so that a half that was typed is rounded as a half
    BigDecimal value = unit.exactFromSi(si).round(new MathContext(MOST_DIGITS));
    String number = SignificantDigits.text(value, digits);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }
}
