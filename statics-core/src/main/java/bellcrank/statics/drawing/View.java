package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Collection;

/**
 * Takes places of the world to the sheet.
 *
 * @param middle place of the world that lies at the sheet's origin
 * @param scale units of the sheet for one metre
 */
record View(Point middle, double scale) {

  private static final double WIDTH = 440;
  private static final double HEIGHT = 340;

  /** Shows these places as large as the sheet allows. */
  static View of(Collection<Point> places) {
    if (places.isEmpty()) {
      return new View(Point.ORIGIN, 1);
    }
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point place : places) {
      left = Math.min(left, place.x());
      right = Math.max(right, place.x());
      low = Math.min(low, place.y());
      high = Math.max(high, place.y());
    }
    double scale = Math.min(WIDTH / (right - left), HEIGHT / (high - low));
    // one place alone has any scale
    Point middle = Point.of((left + right) / 2, (low + high) / 2);
    return new View(middle, Double.isFinite(scale) ? scale : 1);
  }

  Point at(Point place) {
    return Point.of((place.x() - middle.x()) * scale, (middle.y() - place.y()) * scale);
  }

  /** A vector of the world as it is seen, its length kept. */
  static Vector seen(Vector vector) {
    return Vector.of(vector.x(), -vector.y());
  }

  /** Unit vector of a vector as it is seen. */
  static Vector unit(Vector vector) {
    return seen(vector).times(1 / vector.norm());
  }
}
