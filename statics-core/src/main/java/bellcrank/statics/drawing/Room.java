package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * An upright rectangle of the sheet; y grows downwards.
 *
 * @param left least x
 * @param top least y
 * @param right greatest x
 * @param bottom greatest y
 */
record Room(double left, double top, double right, double bottom) {

  static Room at(Point point) {
    return new Room(point.x(), point.y(), point.x(), point.y());
  }

  static Room around(Point centre, double halfWidth, double halfHeight) {
    return at(centre).grown(halfWidth, halfHeight);
  }

  Room with(Point point) {
    return with(at(point));
  }

  Room with(Room other) {
    return new Room(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  Room grown(double sideways, double upright) {
    return new Room(left - sideways, top - upright, right + sideways, bottom + upright);
  }

  Room grown(double by) {
    return grown(by, by);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  Point centre() {
    return Point.of((left + right) / 2, (top + bottom) / 2);
  }

  boolean overlaps(Room other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** The point of the rectangle that is nearest to another. */
  Point nearest(Point point) {
    return Point.of(
        Math.max(left, Math.min(right, point.x())), Math.max(top, Math.min(bottom, point.y())));
  }

  /** How much of a straight piece lies inside (Liang and Barsky's clipping). */
  double lengthInside(Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double from = 0;
    double to = 1;
    double[] slopes = {-dx, dx, -dy, dy};
    double[] rooms = {a.x() - left, right - a.x(), a.y() - top, bottom - a.y()};
    for (int side = 0; side < slopes.length; side++) {
      if (slopes[side] == 0) {
        if (rooms[side] < 0) {
          return 0;
        }
      } else if (slopes[side] < 0) {
        from = Math.max(from, rooms[side] / slopes[side]);
      } else {
        to = Math.min(to, rooms[side] / slopes[side]);
      }
    }
    return to > from ? (to - from) * Math.hypot(dx, dy) : 0;
  }
}
