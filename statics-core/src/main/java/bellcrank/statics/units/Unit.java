package bellcrank.statics.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.List;

/**
 * A unit of measurement: how many SI units one of it is, and where that figure comes from.
 *
 * <p>Text forms are read generally: products {@code N·m}, {@code N*m}, {@code N.m}, {@code N m},
 * {@code kN-m}; one quotient {@code lbf/in}; powers {@code m/s^2}, {@code m/s²}, {@code mm2}. A
 * moment may be written force first or length first. Symbols are case-sensitive, and {@code ft} is
 * the international foot, never the US survey foot.
 *
 * @param symbol the symbol as it is printed behind a number; empty for the plain number only
 * @param dimension the kind of quantity measured
 * @param factor the SI value of one unit (in m, rad, N, kg, N·m, N/m, Pa, m/s², N·m/rad, m², m³,
 *     m⁴); finite and greater than zero
 * @param source where the factor comes from, with its place; not blank
 */
public record Unit(String symbol, Dimension dimension, double factor, String source) {

  /**
   * Checks the components.
   *
   * @param symbol the symbol; empty for the plain number only
   * @param dimension the kind of quantity measured
   * @param factor the SI value of one unit, finite and greater than zero
   * @param source where the factor comes from; not blank
   * @throws QuantityException if the factor is not finite and positive, the source is blank, or the
   *     symbol is blank though the unit is not one of a plain number
   */
  public Unit {
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new QuantityException(
          symbol,
          "the factor " + factor + " of the unit " + symbol + " cannot convert anything",
          "give a finite factor greater than zero");
    }
    if (symbol.isBlank() && dimension != Dimension.NUMBER) {
      throw new QuantityException(
          symbol, "a unit of " + dimension.bareNoun() + " has no symbol", "give a symbol");
    }
    if (source.isBlank()) {
      throw new QuantityException(
          symbol, "the unit " + symbol + " has no source for its factor", "name the source");
    }
  }

  /**
   * Reads a unit of any kind.
   *
   * @param text the symbol, for example {@code lbf}, {@code ft·lbf}, {@code m/s^2}; empty text
   *     means the plain number
   * @return the listed unit if the text is one way of writing it, else the compound unit
   * @throws QuantityException if a symbol is unknown or ambiguous, or if the compound is no unit of
   *     any {@link Dimension}
   */
  public static Unit parse(String text) {
    return UnitText.parse(text, EnumSet.allOf(Dimension.class));
  }

  /**
   * Reads a unit of one kind.
   *
   * @param text the symbol, for example {@code lbf}
   * @param wanted the kind of quantity it must measure
   * @return the listed unit if the text is one way of writing it, else the compound unit
   * @throws QuantityException if a symbol is unknown or ambiguous, or if the unit measures
   *     something else
   */
  public static Unit parse(String text, Dimension wanted) {
    return UnitText.parse(text, EnumSet.of(wanted));
  }

  /**
   * Returns the units known by their own symbol; compounds of them can be read as well.
   *
   * @return the listed units, grouped by kind, the SI unit first in each group
   */
  public static List<Unit> all() {
    return UnitList.listed();
  }

  /**
   * Converts a number of these units to SI.
   *
   * @param value a number of these units, any sign, finite
   * @return the SI value, finite
   * @throws QuantityException if the value or the result is not finite
   */
  public double toSi(double value) {
    requireFinite(value, value);
    return requireFinite(value, exactToSi(BigDecimal.valueOf(value)).doubleValue());
  }

  /**
   * Converts an SI value to a number of these units.
   *
   * @param si the SI value, any sign, finite
   * @return the number of these units, finite
   * @throws QuantityException if the value or the result is not finite
   */
  public double fromSi(double si) {
    requireFinite(si, si);
    return requireFinite(si, exactFromSi(si).doubleValue());
  }

  /** The SI value of a number of these units, all digits kept. */
  BigDecimal exactToSi(BigDecimal value) {
    return value.multiply(BigDecimal.valueOf(factor));
  }

  /**
   * The number of these units that a finite SI value is. Decimal arithmetic keeps what was typed:
   * 35 % is 0.35, and 10 mm² come back as 10 mm².
   */
  BigDecimal exactFromSi(double si) {
    return BigDecimal.valueOf(si).divide(BigDecimal.valueOf(factor), MathContext.DECIMAL128);
  }

  private double requireFinite(double given, double result) {
    if (!Double.isFinite(result)) {
      throw new QuantityException(
          Double.toString(given),
          given + " cannot be converted with the unit " + (symbol.isEmpty() ? "1" : symbol),
          "give a finite number whose converted value is finite as well");
    }
    return result;
  }
}
