package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/**
 * A text that wants a place.
 *
 * @param lines its lines, the value last if it has one
 * @param css class of the text
 * @param anchor what it belongs to
 * @param tries places that would suit it, the best first
 */
record Label(List<String> lines, String css, Point anchor, List<Try> tries) {

  private static final double PADDING = 2;

  /**
   * A place beside a point.
   *
   * @param from the point
   * @param towards unit vector to the side on which the label would lie
   * @param gap distance that it keeps
   */
  record Try(Point from, Vector towards, double gap) {}

  double halfWidth() {
    double widest = 0;
    for (String line : lines) {
      widest = Math.max(widest, TextWidth.of(line));
    }
    return widest / 2 + PADDING;
  }

  double halfHeight() {
    return lines.size() * TextWidth.LINE / 2 + PADDING;
  }

  /**
   * The room that it takes at a place. Half of its width is handed in, since many places are tried
   * and measuring letters takes longer than all else.
   */
  Room at(Try place, double halfWidth) {
    Vector t = place.towards();
    double away = place.gap() + halfWidth * Math.abs(t.x()) + halfHeight() * Math.abs(t.y());
    return Room.around(place.from().plus(t.times(away)), halfWidth, halfHeight());
  }
}
