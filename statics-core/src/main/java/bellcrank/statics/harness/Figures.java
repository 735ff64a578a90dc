package bellcrank.statics.harness;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/** Writes numbers for messages, with zero for what is only rounding. */
record Figures(UnitSystem units, LoadScale scale) {

  /** Significant digits of a number, where more are not needed to tell it from another. */
  private static final int DIGITS = 4;

  private static final int MOST_DIGITS = 15;

  /** Share of the loads below which a number is zero but for rounding. */
  private static final double ROUNDING = 1e-11;

  static Figures of(Setup.Shown shown) {
    return new Figures(shown.units(), LoadScale.of(shown.balance()));
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

  /** By how much, with a few digits and its share of the other number. */
  String gap(double difference, double of, Unit unit) {
    String share =
        of == 0
            ? ""
            : " ("
                + new Quantity(Math.abs(difference / of), Dimension.NUMBER)
                    .format(Unit.parse("%"), 2)
                + ")";
    return text(Math.abs(difference), unit, 3) + share;
  }
}
