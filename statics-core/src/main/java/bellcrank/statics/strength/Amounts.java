package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/**
 * Writes numbers into the workings of rules. Where the units are metre and pascal, stresses are
 * told in MPa, forces per length of weld in N/mm, sizes and areas of cross-sections in mm and mm²:
 * they would have many noughts otherwise.
 */
record Amounts(UnitSystem units) {

  private static final int DIGITS = 4;
  private static final List<Unit> SMALL =
      List.of(Unit.parse("MPa"), Unit.parse("mm"), Unit.parse("mm²"), Unit.parse("N/mm"));

  private String small(double value, Dimension dimension) {
    UnitSystem chosen = units;
    for (Unit unit : SMALL) {
      if (unit.dimension() == dimension && units.unit(dimension).factor() == 1) {
        chosen = chosen.with(unit);
      }
    }
    // the sign of the formulas around it
    return chosen.format(value, dimension, DIGITS).replace('-', '−');
  }

  String stress(double value) {
    return small(value, Dimension.PRESSURE);
  }

  /** A size of a cross-section or weld. */
  String size(double value) {
    return small(value, Dimension.LENGTH);
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
    return small(value, Dimension.AREA);
  }

  String angle(double value) {
    return units.format(value, Dimension.ANGLE, DIGITS);
  }

  String perLength(double value) {
    return small(value, Dimension.FORCE_PER_LENGTH);
  }

  String number(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }

  /** A divisor, left out where it is one. */
  String over(double factor) {
    return factor == 1 ? "" : "/" + plain(factor);
  }

  /** A strength over its factor, and what comes of it where it is divided at all. */
  String divided(double strength, double factor) {
    String quotient = factor == 1 ? "" : " = " + stress(strength / factor);
    return stress(strength) + over(factor) + quotient;
  }

  static String plain(double factor) {
    String text = String.format(Locale.ROOT, "%.3f", factor);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
