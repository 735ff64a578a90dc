package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;

/** Short forms for tests: values with units in, numbers out. */
final class Si {

  private Si() {}

  /** The outcome without regard to one-sided and rough parts. */
  static String verdict(Balance balance) {
    return balance.outcome() instanceof Outcome.NoBalance
        ? "no balance"
        : balance.freedoms().isEmpty() ? "held" : "loose";
  }

  static double force(String text) {
    return Quantity.parse(text, Dimension.FORCE).si();
  }

  static double length(String text) {
    return Quantity.parse(text, Dimension.LENGTH).si();
  }

  static double moment(String text) {
    return Quantity.parse(text, Dimension.MOMENT).si();
  }

  static double number(Device device, String ask) {
    return number(Balance.of(device), ask);
  }

  static double number(Balance balance, String ask) {
    return balance
        .number(ask)
        .orElseThrow(() -> new AssertionError(ask + ": " + balance.answer(ask)));
  }

  static Answer.Reason reason(Balance balance, String ask) {
    if (balance.answer(ask) instanceof Answer.Unanswered none) {
      return none.reason();
    }
    throw new AssertionError(ask + ": " + balance.answer(ask));
  }

  static String explanation(Balance balance, String ask) {
    if (balance.answer(ask) instanceof Answer.Unanswered none) {
      return none.explanation();
    }
    throw new AssertionError(ask + ": " + balance.answer(ask));
  }
}
