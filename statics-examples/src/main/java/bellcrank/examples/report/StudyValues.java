package bellcrank.examples.report;

import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.Input;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;

/**
 * Values of studies in a system of units, which stay in one line.
 *
 * @param units the units
 */
record StudyValues(UnitSystem units) {

  String text(double si, Dimension dimension) {
    return text(si, dimension, Amounts.DIGITS);
  }

  String text(double si, Dimension dimension, int digits) {
    return kept(units.format(si + 0.0, dimension, digits));
  }

  String text(Quantity quantity) {
    return text(quantity.si(), quantity.dimension());
  }

  String text(double si, Input input) {
    return text(si, input.dimension());
  }

  /** The number, or why there is none. */
  String text(FigureAnswer answer) {
    if (answer instanceof FigureAnswer.Is is) {
      return text(is.si(), is.dimension());
    }
    return ((FigureAnswer.None) answer).reason().words();
  }

  /** Blanks between a number and its unit do not break. */
  static String kept(String value) {
    return value.replace(' ', Wrapping.UNBROKEN);
  }
}
