package bellcrank.examples.report;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.harness.LoadScale;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/** Writes the values of one balance in a system of units, with zero for what is only rounding. */
final class Amounts {

  /** Significant digits of a printed answer. */
  static final int DIGITS = 4;

  /** Share of the scale below which a value is rounding. */
  private static final double ROUNDING = 1e-11;

  private final UnitSystem units;
  private final LoadScale scale;
  private final Device device;

  private Amounts(UnitSystem units, LoadScale scale, Device device) {
    this.units = units;
    this.scale = scale;
    this.device = device;
  }

  /** For the answers of a balance. */
  static Amounts of(UnitSystem units, Balance balance) {
    double largest = 0;
    for (Reaction reaction : balance.reactions()) {
      if (reaction.size() instanceof Answer.Value value) {
        largest = Math.max(largest, value.si());
      }
    }
    return new Amounts(units, LoadScale.of(balance).withForce(largest), balance.device());
  }

  /** Value and unit with the usual digits. */
  String text(double si, Dimension dimension) {
    return text(si, dimension, DIGITS);
  }

  /** Value and unit, which stay in one line. */
  String text(double si, Dimension dimension, int digits) {
    return text(si, units.unit(dimension), digits);
  }

  /** Value in a stated unit, which stay in one line. */
  String text(double si, Unit unit, int digits) {
    return plain(si, unit, digits).replace(' ', Wrapping.UNBROKEN);
  }

  private String plain(double si, Unit unit, int digits) {
    double shown = isZero(si, unit.dimension()) ? 0 : si;
    return new Quantity(shown, unit.dimension()).format(unit, digits);
  }

  /** A motion in words. */
  String motion(Freedom freedom) {
    return freedom.words(device, units);
  }

  /** The value without its unit, for a table whose head names it. */
  String number(double si, Dimension dimension) {
    String text = plain(si, units.unit(dimension), DIGITS);
    int blank = text.indexOf(' ');
    return blank < 0 ? text : text.substring(0, blank);
  }

  /** The head of a column of numbers. */
  String head(String word, Dimension dimension) {
    Unit unit = units.unit(dimension);
    return unit.symbol().isEmpty() ? word : word + " (" + unit.symbol() + ")";
  }

  /** Whether a value is zero but for rounding. */
  boolean isZero(double si, Dimension dimension) {
    boolean scaled =
        dimension == Dimension.FORCE
            || dimension == Dimension.MOMENT
            || dimension == Dimension.LENGTH
            || dimension == Dimension.FORCE_PER_LENGTH
            || dimension == Dimension.MASS;
    return Math.abs(si) <= (scaled ? ROUNDING * scale.of(dimension) : 0);
  }

  /** A force in words: size and direction. */
  String force(double x, double y) {
    double size = Math.hypot(x, y);
    if (isZero(size, Dimension.FORCE)) {
      return text(0, Dimension.FORCE);
    }
    return text(size, Dimension.FORCE) + " " + DirectionWords.of(x, y);
  }
}
