package bellcrank.statics.drawing;

import java.math.BigDecimal;

/** Numbers of the sheet as text, the same in every locale. */
final class Figure {

  private static final int DECIMALS = 3;
  private static final double UNIT = 1e3;

  private Figure() {}

  /** A length or place on the sheet, to a thousandth. */
  static String of(double value) {
    long thousandths = Math.round(value * UNIT);
    return thousandths == 0
        ? "0"
        : BigDecimal.valueOf(thousandths, DECIMALS).stripTrailingZeros().toPlainString();
  }
}
