package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An answer that is expected, as a printed number with its digits or as words.
 *
 * @param ask what is asked
 * @param value what it should be answered with
 */
public record ExpectedAnswer(Ask ask, Value value) {

  /** What an ask should be answered with. */
  public sealed interface Value {}

  /**
   * A number, which must hold to half a unit of its last significant digit, bound included, in the
   * unit in which it is written. A zero is held to half a unit in the same digit of the loads' size
   * (for a moment, times the device's size; for an angle in rad or a plain number, of 1; for a
   * length, of the device's size). Angles are compared modulo a full turn.
   *
   * @param quantity the number in SI, with its kind
   * @param unit the unit in which it is written and in which its digits count
   * @param digits significant digits, 1 to 15
   */
  public record Amount(Quantity quantity, Unit unit, int digits) implements Value {

    /** Room for the rounding of a difference that meets the bound, relative to the bound. */
    private static final double SLACK = 1e-9;

    /** Room for the rounding of the value itself, in units of its last binary place. */
    private static final int LAST_PLACES = 8;

    /** Decimal digits that a double holds for certain. */
    private static final MathContext CERTAIN = new MathContext(15);

    /**
     * Checks the digits and the unit.
     *
     * @param quantity the number in SI, with its kind
     * @param unit the unit in which it is written; of the same kind
     * @param digits significant digits, 1 to 15
     * @throws ModelException if the digits are out of range or the unit is of another kind
     */
    public Amount {
      if (digits < 1 || digits > CERTAIN.getPrecision()) {
        throw new ModelException("expected answer", "digits", digits, "1 to 15");
      }
      if (unit.dimension() != quantity.dimension()) {
        throw new ModelException(
            "expected answer",
            "unit",
            unit.symbol(),
            "a unit that measures " + quantity.dimension().noun());
      }
    }

    /**
     * Half a unit of the last digit.
     *
     * @param sizeOfZero the size in SI that a zero is held against
     * @return the greatest difference that holds, in SI, 0 or more
     */
    public double allowed(double sizeOfZero) {
      if (quantity.si() == 0) {
        return 0.5 * Math.pow(10, -digits) * sizeOfZero;
      }
      BigDecimal written = BigDecimal.valueOf(unit.fromSi(quantity.si())).round(CERTAIN);
      int exponent = written.precision() - written.scale() - 1;
      return unit.toSi(BigDecimal.valueOf(5, digits - exponent).doubleValue());
    }

    /**
     * Whether a number that was found is near enough.
     *
     * @param found the number in SI
     * @param allowed the greatest difference that holds, in SI; a little is added for rounding
     * @return true if it is
     */
    public boolean isMetBy(double found, double allowed) {
      return Math.abs(difference(found)) <= withRoom(allowed);
    }

    /**
     * A difference with room for rounding.
     *
     * @param allowed the greatest difference that holds, in SI
     * @return a little more
     */
    public double withRoom(double allowed) {
      return allowed * (1 + SLACK) + LAST_PLACES * Math.ulp(quantity.si());
    }

    /** How much more was found than expected. */
    double difference(double found) {
      double difference = found - quantity.si();
      return quantity.dimension() == Dimension.ANGLE
          ? Math.IEEEremainder(difference, 2 * Math.PI)
          : difference;
    }
  }

  /**
   * Words, which must be the same.
   *
   * @param text the words, such as {@code in balance}
   */
  public record Words(String text) implements Value {}

  /**
   * Holds an answer that was found against this one.
   *
   * @param found the answer
   * @param balance the balance that it was found with, for the size of the loads
   * @return both, and whether it holds
   */
  public CheckedAnswer check(Answer found, Balance balance) {
    if (value instanceof Words words) {
      boolean same = found instanceof Answer.Words answer && answer.text().equals(words.text());
      return new CheckedAnswer(this, found, 0, same);
    }
    Amount amount = (Amount) value;
    Dimension dimension = amount.quantity().dimension();
    double size = amount.quantity().si() == 0 ? LoadScale.of(balance).of(dimension) : 0;
    double allowed = amount.allowed(size);
    boolean holds =
        found instanceof Answer.Value number
            && number.dimension() == dimension
            && amount.isMetBy(number.si(), allowed);
    return new CheckedAnswer(this, found, allowed, holds);
  }
}
