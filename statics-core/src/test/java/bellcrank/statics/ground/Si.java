package bellcrank.statics.ground;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import org.assertj.core.data.Offset;

/** Printed figures in SI, and how exactly they are printed. */
final class Si {

  private Si() {}

  static double pressure(String text) {
    return Quantity.parse(text, Dimension.PRESSURE).si();
  }

  /** Half a unit of the last of these decimals, the bound included. */
  static Offset<Double> printed(int decimals) {
    return Offset.offset(0.5000001 * Math.pow(10, -decimals));
  }

  static Offset<Double> relative(double value, double share) {
    return Offset.offset(Math.abs(value) * share);
  }
}
