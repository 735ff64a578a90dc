package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.Set;

/**
 * The small step of an input by which effects are compared.
 *
 * @param change in SI units; below zero where a number below zero grows in size
 * @param words how it is told, such as {@code 1 %} or {@code 1 mm}
 */
record EffectStep(double change, String words) {

  private static final double SHARE = 0.01;

  /** Units of length that are multiples of an inch. */
  private static final Set<String> OF_INCHES = Set.of("in", "ft", "yd");

  /** The step by which effects are ranked, whatever the units in which they are told. */
  static EffectStep of(Input input, double value) {
    return of(input, value, UnitSystem.SI);
  }

  /** The step by which an effect is told. */
  static EffectStep of(Input input, double value, UnitSystem units) {
    Dimension dimension = input.dimension();
    boolean place = isCoordinate(input.number()) || (dimension == Dimension.LENGTH && value == 0);
    if (place) {
      return isOfInches(units) ? of(0.1, Unit.parse("in")) : of(1, Unit.parse("mm"));
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
    return of(1, units.unit(dimension));
  }

  private static boolean isCoordinate(InputNumber number) {
    return number instanceof PlaceNumbers.Coordinate
        || (number instanceof Together together && isCoordinate(together.all().get(0)));
  }

  /** The unit in which small amounts of a quantity are easily read. */
  static Unit fine(Dimension dimension, UnitSystem units) {
    return switch (dimension) {
      case LENGTH -> Unit.parse(isOfInches(units) ? "in" : "mm");
      case ANGLE -> Unit.parse("deg");
      default -> units.unit(dimension);
    };
  }

  private static boolean isOfInches(UnitSystem units) {
    return OF_INCHES.contains(units.unit(Dimension.LENGTH).symbol());
  }

  private static EffectStep of(double number, Unit unit) {
    double si = unit.toSi(number);
    return new EffectStep(si, new Quantity(si, unit.dimension()).format(unit, 1));
  }
}
