package bellcrank.statics.explain;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes numbers of equations in a system of units, so that moments are force times length. */
final class Figures {

  private static final int LEAST_PLAIN = -4;
  private static final int LEAST_LARGE = 7;

  private final Unit length;
  private final Unit force;
  private final int digits;

  Figures(UnitSystem units, int digits) {
    length = units.unit(Dimension.LENGTH);
    force = units.unit(Dimension.FORCE);
    this.digits = digits;
  }

  int digits() {
    return digits;
  }

  /** The number as it is printed, in the unit. */
  double rounded(double si, Dimension kind) {
    return round(si / factor(kind)).doubleValue();
  }

  private BigDecimal round(double value) {
    return new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
  }

  double factor(Dimension kind) {
    return switch (kind) {
      case LENGTH -> length.factor();
      case FORCE -> force.factor();
      case MOMENT -> force.factor() * length.factor();
      default -> 1;
    };
  }

  String unit(Dimension kind) {
    return switch (kind) {
      case LENGTH -> length.symbol();
      case FORCE -> force.symbol();
      case MOMENT -> force.symbol() + "·" + length.symbol();
      default -> "";
    };
  }

  /** The number without its unit. */
  String text(double si, Dimension kind) {
    BigDecimal rounded = round(si / factor(kind)).stripTrailingZeros();
    if (rounded.signum() == 0) {
      return "0";
    }
    int exponent = rounded.precision() - rounded.scale() - 1;
    String text =
        exponent >= LEAST_PLAIN && exponent < LEAST_LARGE
            ? rounded.toPlainString()
            : rounded.movePointLeft(exponent).toPlainString() + "e" + exponent;
    return text.replace('-', '−').replace("e−", "e-");
  }

  Piece.Figure figure(double si, Dimension kind) {
    return new Piece.Figure(text(si, kind), unit(kind), false);
  }

  /** A number behind a sign: in brackets if it is negative. */
  Piece.Figure factorFigure(double si, Dimension kind) {
    return new Piece.Figure(text(si, kind), unit(kind), si < 0);
  }
}
