package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Locale;

/** Ends of arrows. Each origin has its own shape, so that no colour is needed to tell them. */
enum Head {
  /** Filled. */
  FULL,
  /** A rim only. */
  HOLLOW,
  /** Two in a row. */
  DOUBLE,
  /** Two strokes. */
  OPEN;

  static Head of(Origin origin) {
    return switch (origin) {
      case LOAD, WEIGHT -> FULL;
      case CONNECTION -> HOLLOW;
      case SOUGHT -> DOUBLE;
    };
  }

  /** Class of the style of an origin. */
  static String css(Origin origin) {
    return origin.name().toLowerCase(Locale.ROOT);
  }

  /** Length of the head of an arrow of a given length. */
  static double size(double arrow) {
    return Math.min(12, 0.55 * arrow);
  }

  /** The head's path; it begins at the tip. */
  Pen pen(Point tip, Vector unit, double size) {
    Vector side = unit.perpendicular().times(size * 0.36);
    Point back = tip.plus(unit.times(-size));
    if (this == OPEN) {
      return Pen.from(tip).to(back.plus(side)).move(tip).to(back.plus(side.times(-1)));
    }
    if (this == DOUBLE) {
      Point middle = tip.plus(unit.times(-size * 0.5));
      Vector half = side.times(0.95);
      return Pen.from(tip)
          .to(middle.plus(half))
          .to(middle.plus(half.times(-1)))
          .close()
          .move(middle)
          .to(back.plus(half))
          .to(back.plus(half.times(-1)))
          .close();
    }
    return Pen.from(tip).to(back.plus(side)).to(back.plus(side.times(-1))).close();
  }
}
