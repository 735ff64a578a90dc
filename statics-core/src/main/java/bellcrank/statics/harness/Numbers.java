package bellcrank.statics.harness;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/** Writes numbers for messages, with zero for what is only rounding. */
record Numbers(UnitSystem units, LoadScale scale) {

  /** Significant digits of a number, where more are not needed to tell it from another. */
  private static final int DIGITS = 4;

  private static final int MOST_DIGITS = 15;

  private static final Unit PERCENT = Unit.parse("%");

  /** Share of the loads below which a number is zero but for rounding. */
  private static final double ROUNDING = 1e-11;

  static Numbers of(Setup.Shown shown) {
    return new Numbers(shown.units(), LoadScale.of(shown.balance()));
  }

  String text(double si, Dimension dimension) {
    return text(si, units.unit(dimension));
  }

  String text(double si, Unit unit) {
    return text(si, unit, DIGITS);
  }

  private String text(double si, Unit unit, int digits) {
    boolean zero =
        Math.abs(si) <= ROUNDING * scale.of(unit.dimension())
            && unit.dimension() != Dimension.NUMBER;
    return new Quantity(zero ? 0 : si, unit.dimension()).format(unit, digits);
  }

  /** A number with as many digits as tell it from another one. */
  String apartFrom(double other, double si, Unit unit) {
    int digits = DIGITS;
    while (other != si
        && digits < MOST_DIGITS
        && text(other, unit, digits).equals(text(si, unit, digits))) {
      digits++;
    }
    return text(si, unit, digits);
  }

  /** By how much, and which share of another number that is. */
  String gap(double difference, double of, Unit unit) {
    String share =
        of == 0
            ? ""
            : " ("
                + trimmed(
                    new Quantity(Math.abs(difference / of), Dimension.NUMBER).format(PERCENT, 2))
                + ")";
    return brief(Math.abs(difference), unit) + share;
  }

  /** A number without needless digits. */
  String brief(double si, Unit unit) {
    return trimmed(text(si, unit));
  }

  /** A plain number without needless digits. */
  static String plain(double value) {
    return trimmed(new Quantity(value, Dimension.NUMBER).format(Dimension.NUMBER.si(), DIGITS));
  }

  /** A stated value without needless digits. */
  static String stated(double si, Unit unit) {
    return trimmed(new Quantity(si, unit.dimension()).format(unit, MOST_DIGITS));
  }

  /** A share with three digits. */
  static String percent(double share) {
    return new Quantity(share, Dimension.NUMBER).format(PERCENT, 3);
  }

  /** Without zeros behind the last digit that counts. */
  private static String trimmed(String text) {
    return text.replaceFirst("(\\.[0-9]*?)0+(?= |$)", "$1").replaceFirst("\\.(?= |$)", "");
  }
}
