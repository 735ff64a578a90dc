package bellcrank.statics.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes a number rounded to significant digits. */
final class SignificantDigits {
  /** Rounded values from ten to this power are written plainly. */
  private static final int LEAST_PLAIN = -4;

  /** Rounded values from ten to this power are written with an exponent. */
  private static final int LEAST_LARGE = 7;

  private SignificantDigits() {}

  static String text(BigDecimal value, int digits) {
    if (value.signum() == 0) {
      return "0";
    }
    BigDecimal rounded = value.round(new MathContext(digits, RoundingMode.HALF_UP));
    int exponent = rounded.precision() - rounded.scale() - 1;
    if (exponent >= LEAST_PLAIN && exponent < LEAST_LARGE) {
      return rounded.setScale(Math.max(0, digits - 1 - exponent)).toPlainString();
    }
    BigDecimal mantissa = rounded.movePointLeft(exponent).setScale(digits - 1);
    return mantissa.toPlainString() + "e" + exponent;
  }
}
