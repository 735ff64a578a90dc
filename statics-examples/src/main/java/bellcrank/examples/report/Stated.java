package bellcrank.examples.report;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/**
 * Writes values that were given: with the digits that they have, six at most.
 *
 * @param units units of the values
 */
record Stated(UnitSystem units) {

  private static final int DIGITS = 6;

  /** Value and unit. */
  String text(double si, Dimension dimension) {
    String symbol = units.unit(dimension).symbol();
    return number(si, dimension) + (symbol.isEmpty() ? "" : Wrapping.UNBROKEN + symbol);
  }

  /** The value without its unit. */
  String number(double si, Dimension dimension) {
    String text = units.format(si, dimension, DIGITS).strip();
    int blank = text.indexOf(' ');
    String number = blank < 0 ? text : text.substring(0, blank);
    boolean plain = number.contains(".") && number.indexOf('e') < 0;
    return plain ? number.replaceAll("0+$", "").replaceAll("\\.$", "") : number;
  }

  /** A pure number. */
  static String number(double value) {
    return new Stated(UnitSystem.SI).number(value, Dimension.NUMBER);
  }

  /** The head of a column of numbers. */
  String head(String word, Dimension dimension) {
    Unit unit = units.unit(dimension);
    return word + " (" + unit.symbol() + ")";
  }

  /** A direction in words. */
  static String way(Direction direction) {
    return DirectionWords.of(direction.x(), direction.y());
  }
}
