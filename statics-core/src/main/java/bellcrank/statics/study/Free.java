package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;

/**
 * A number that a search may choose.
 *
 * @param input which number of the model
 * @param from its least value, in SI units
 * @param to its greatest value, above the least
 */
public record Free(Input input, double from, double to) {

  /**
   * Checks the bounds.
   *
   * @param input which number of the model
   * @param from its least value, in SI units
   * @param to its greatest value, above the least
   * @throws ModelException naming the input, if a bound is not finite or they are not in order
   */
  public Free {
    if (!Double.isFinite(from) || !Double.isFinite(to)) {
      throw new ModelException(
          input.text(), "bounds", from + " to " + to, "finite bounds: a search needs an end");
    }
    if (!(from < to)) {
      throw new ModelException(
          input.text(), "bounds", from + " to " + to, "the least one first, the other above it");
    }
  }

  double at(double share) {
    return share == 1 ? to : from + share * (to - from);
  }

  /** The share nearest to a value; an angle may be told by any of its turns. */
  double share(double value, Dimension dimension) {
    double own = value;
    if (dimension == Dimension.ANGLE) {
      double middle = (from + to) / 2;
      own = middle + Math.IEEEremainder(value - middle, 2 * Math.PI);
    }
    return Math.max(0, Math.min(1, (own - from) / (to - from)));
  }
}
