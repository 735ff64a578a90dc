package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Locale;

/** Writes numbers into the workings of rules. */
record Amounts(UnitSystem units) {

  private static final int DIGITS = 4;

  String stress(double value) {
    return units.format(value, Dimension.PRESSURE, DIGITS);
  }

  String force(double value) {
    return units.format(value, Dimension.FORCE, DIGITS);
  }

  String moment(double value) {
    return units.format(value, Dimension.MOMENT, DIGITS);
  }

  String length(double value) {
    return units.format(value, Dimension.LENGTH, DIGITS);
  }

  String area(double value) {
    return units.format(value, Dimension.AREA, DIGITS);
  }

  String angle(double value) {
    return units.format(value, Dimension.ANGLE, DIGITS);
  }

  String perLength(double value) {
    return units.format(value, Dimension.FORCE_PER_LENGTH, DIGITS);
  }

  String number(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }

  /** A divisor, left out where it is one. */
  String over(double factor) {
    return factor == 1 ? "" : "/" + plain(factor);
  }

  /** The quotient, left out where nothing was divided. */
  String result(double stress, double factor) {
    return factor == 1 ? "" : " = " + stress(stress);
  }

  private static String plain(double factor) {
    String text = String.format(Locale.ROOT, "%.3f", factor);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
