package bellcrank.examples.report;

import java.util.Locale;

/**
 * Says in words which way a force points: {@code up}, {@code left}, {@code right and up, 63.4°}.
 * The angle is the one from the horizontal.
 */
final class DirectionWords {

  /** Slopes that would be printed as 0.0° or 90.0° are called straight. */
  private static final double STRAIGHT = 0.05;

  private DirectionWords() {}

  /** The words for a force that is not zero. */
  static String of(double x, double y) {
    String level = x < 0 ? "left" : "right";
    String upright = y < 0 ? "down" : "up";
    double degrees = Math.toDegrees(Math.atan2(Math.abs(y), Math.abs(x)));
    if (degrees < STRAIGHT) {
      return level;
    }
    if (degrees >= 90 - STRAIGHT) {
      return upright;
    }
    return String.format(Locale.ROOT, "%s and %s, %.1f°", level, upright, degrees);
  }

  /** The words for the sense of a couple that is not zero. */
  static String turning(double couple) {
    return couple < 0 ? "clockwise" : "counter-clockwise";
  }
}
