package bellcrank.examples.file;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes numbers so that they read back to the same double: in the units of the file, or in SI with
 * the unit where the number would be out of a double's range.
 *
 * @param units units of bare numbers
 * @param gravity size of gravity in m/s², for masses that are better stated by their weight
 */
record AmountText(UnitSystem units, double gravity) {

  private static final MathContext WORKING = new MathContext(40);

  /** Digits to be tried; fewer come out of these by dropping zeros at the end. */
  private static final List<Integer> DIGITS = List.of(15, 16, 17);

  private static final int MOST_PLAIN_ZEROS = 6;

  /** A value, bare if it can be. */
  String bare(double si, Dimension dimension) {
    return text(si, units.unit(dimension), "");
  }

  /** A value with the file's unit. */
  String withUnit(double si, Dimension dimension) {
    return withUnit(si, units.unit(dimension));
  }

  /** A value with a unit that its symbol states. */
  String withUnit(double si, Unit unit) {
    return text(si, unit, unit.symbol().isEmpty() ? "" : " " + unit.symbol());
  }

  private String text(double si, Unit unit, String suffix) {
    return exact(si, unit, suffix)
        .orElseGet(() -> number(si) + " " + unit.dimension().si().symbol());
  }

  /**
   * The value as a number of a unit, which reads back exactly with 17 digits at most. Only numbers
   * that a double cannot hold are not to be had.
   */
  private Optional<String> exact(double si, Unit unit, String suffix) {
    // the decimal factor, as it is used in reading
    BigDecimal value = new BigDecimal(si).divide(BigDecimal.valueOf(unit.factor()), WORKING);
    for (int digits : DIGITS) {
      String text = plain(value.round(new MathContext(digits))) + suffix;
      if (si(text, unit.dimension()).filter(read -> read == si).isPresent()) {
        return Optional.of(text);
      }
    }
    return Optional.empty();
  }

  /** What a text reads as. */
  Optional<Double> si(String text, Dimension dimension) {
    try {
      return Optional.of(Quantity.parse(text, dimension, units).si());
    } catch (QuantityException e) {
      return Optional.empty();
    }
  }

  /** A value rounded to some digits, in the unit of the file; it need not read back exactly. */
  String rounded(double si, Dimension dimension, int digits) {
    BigDecimal factor = new BigDecimal(units.unit(dimension).factor());
    return plain(new BigDecimal(si).divide(factor, WORKING).round(new MathContext(digits)));
  }

  /** A value with its unit; a mass in kilograms, since a bare number would be a weight. */
  String ofKind(double si, Dimension dimension) {
    return dimension == Dimension.MASS ? number(si) + " kg" : withUnit(si, dimension);
  }

  /** A mass, as such or by its weight, whichever is shorter. */
  String mass(double mass) {
    List<String> texts = new ArrayList<>();
    Unit own = units.unit(Dimension.MASS);
    exact(mass, own, " " + own.symbol()).ifPresent(texts::add);
    texts.add(plain(new BigDecimal(Double.toString(mass))) + " kg");
    if (gravity > 0 && Double.isFinite(mass * gravity)) {
      for (int digits : List.of(12, 15)) {
        String weight = rounded(mass * gravity, Dimension.FORCE, digits);
        if (si(weight, Dimension.FORCE).filter(force -> force / gravity == mass).isPresent()) {
          texts.add(weight);
        }
      }
    }
    texts.sort(Comparator.comparingInt(String::length));
    return texts.get(0);
  }

  /** A number in digits. */
  static String number(double value) {
    return plain(new BigDecimal(Double.toString(value)));
  }

  private static String plain(BigDecimal value) {
    if (value.signum() == 0) {
      return "0";
    }
    BigDecimal short0 = value.stripTrailingZeros();
    int exponent = short0.precision() - short0.scale() - 1;
    boolean plainly = exponent >= -MOST_PLAIN_ZEROS && exponent < 17;
    return plainly ? short0.toPlainString() : short0.toString().toLowerCase(Locale.ROOT);
  }
}
