package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;

/**
 * The small step of an input by which effects are compared.
 *
 * @param change in SI units; below zero where a number below zero grows in size
 * @param words how it is told, such as {@code 1 %} or {@code 1 mm}
 */
record EffectStep(double change, String words) {

  private static final double SHARE = 0.01;

  static EffectStep of(Input input, double value) {
    Dimension dimension = input.dimension();
    boolean place =
        input.number() instanceof PlaceNumbers.Coordinate
            || (dimension == Dimension.LENGTH && value == 0);
    if (place) {
      return of(1, Unit.parse("mm"));
    }
    if (dimension == Dimension.ANGLE) {
      return of(1, Unit.parse("deg"));
    }
    if (value != 0) {
      return new EffectStep(SHARE * value, "1 %");
    }
    if (dimension == Dimension.NUMBER) {
      return new EffectStep(SHARE, "0.01");
    }
    return of(1, dimension.si());
  }

  private static EffectStep of(double number, Unit unit) {
    double si = unit.toSi(number);
    return new EffectStep(si, new Quantity(si, unit.dimension()).format(unit, 1));
  }
}
