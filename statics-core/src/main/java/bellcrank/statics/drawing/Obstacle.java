package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * A straight piece of the picture that labels should keep clear of.
 *
 * @param start one end
 * @param end the other
 * @param weight how much it matters; an arrow's shaft is 3, a bar 1
 */
record Obstacle(Point start, Point end, double weight) {

  double distance(Point point) {
    double dx = end.x() - start.x();
    double dy = end.y() - start.y();
    double squared = dx * dx + dy * dy;
    double along =
        squared > 0 ? ((point.x() - start.x()) * dx + (point.y() - start.y()) * dy) / squared : 0;
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(start.x() + t * dx - point.x(), start.y() + t * dy - point.y());
  }
}
