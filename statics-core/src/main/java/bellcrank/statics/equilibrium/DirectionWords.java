package bellcrank.statics.equilibrium;

import bellcrank.statics.geometry.Vector;
import java.math.BigDecimal;
import java.math.MathContext;

/** A direction in the words of a person who stands before the drawing. */
public final class DirectionWords {

  private static final String[] QUARTERS = {"right", "up", "left", "down"};
  private static final MathContext DIGITS = new MathContext(4);

  private DirectionWords() {}

  /**
   * The words.
   *
   * @param direction a vector of any length but zero
   * @return such as {@code left} or {@code right and up at 30° to the level}
   */
  public static String of(Vector direction) {
    double quarters = Math.atan2(direction.y(), direction.x()) / (Math.PI / 2);
    if (Math.abs(quarters - Math.rint(quarters)) < 1e-6) {
      return QUARTERS[Math.floorMod((int) Math.rint(quarters), 4)];
    }
    String level = direction.x() > 0 ? "right" : "left";
    String steep = direction.y() > 0 ? "up" : "down";
    double slope = Math.toDegrees(Math.atan2(Math.abs(direction.y()), Math.abs(direction.x())));
    return level
        + " and "
        + steep
        + " at "
        + BigDecimal.valueOf(slope).round(DIGITS).stripTrailingZeros().toPlainString()
        + "° to the level";
  }
}
