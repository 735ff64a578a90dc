package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/** What is behind an {@link Input}: how the number is called, read and put. */
interface InputNumber {

  /** Share of a number, and rad of an angle, by which it may be off for rounding. */
  double KEPT = 1e-9;

  /** The text of the input, which the parser reads again. */
  String text();

  /** What kind of quantity it is. */
  Dimension dimension();

  /**
   * The number as it stands in a draft.
   *
   * @throws ModelException if the model has no such number
   */
  double read(Draft draft);

  /**
   * Puts another number.
   *
   * @throws ModelException if the model has no such number, or it cannot be this
   */
  void write(Draft draft, double value);

  /** Whether it is what it was put to, but for rounding; what was put later may have changed it. */
  default boolean holds(Draft draft, double value) {
    double off = read(draft) - value;
    return dimension() == Dimension.ANGLE
        ? Math.abs(Math.IEEEremainder(off, 2 * Math.PI)) <= KEPT
        : Math.abs(off) <= KEPT * Math.abs(value);
  }

  /**
   * How fast the numbers behind the forces change with this one.
   *
   * @return empty if that is not known
   */
  Optional<Rates> rates(Draft draft);
}
