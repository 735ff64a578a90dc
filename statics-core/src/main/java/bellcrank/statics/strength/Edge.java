package bellcrank.statics.strength;

import bellcrank.statics.geometry.Point;
import java.util.Optional;

/**
 * A piece of the outline of an area: straight, or an arc that stays within one quarter of its
 * circle. An arc so short goes up or down all the way, and left or right, so it crosses a level
 * once at most. The area lies on the left of it.
 */
record Edge(Point start, Point end, Optional<Point> centre) {

  static Edge straight(Point start, Point end) {
    return new Edge(start, end, Optional.empty());
  }

  static Edge arc(Point start, Point end, Point centre) {
    return new Edge(start, end, Optional.of(centre));
  }

  Edge reversed() {
    return new Edge(end, start, centre);
  }

  Edge moved(double dx, double dy) {
    return new Edge(
        moved(start, dx, dy), moved(end, dx, dy), centre.map(one -> moved(one, dx, dy)));
  }

  private static Point moved(Point point, double dx, double dy) {
    return Point.of(point.x() + dx, point.y() + dy);
  }

  /** Turned by a quarter counter-clockwise about the origin, with no rounding. */
  Edge turned() {
    return new Edge(turned(start), turned(end), centre.map(Edge::turned));
  }

  private static Point turned(Point point) {
    return Point.of(-point.y(), point.x());
  }

  /** Left and right exchanged; the direction too, so that the area stays on the left. */
  Edge mirrored() {
    return new Edge(mirrored(end), mirrored(start), centre.map(Edge::mirrored));
  }

  private static Point mirrored(Point point) {
    return Point.of(-point.x(), point.y());
  }

  boolean crosses(double level) {
    return (start.y() <= level) != (end.y() <= level);
  }

  /** Whether the area begins here for one who comes from the left: the edge leads down. */
  boolean enters() {
    return end.y() < start.y();
  }

  /** Where the edge is at a level that it crosses. */
  double at(double level) {
    double place;
    if (centre.isPresent()) {
      Point middle = centre.get();
      double radius = middle.distance(start);
      double up = level - middle.y();
      double out = Math.sqrt(Math.max(0, (radius - up) * (radius + up)));
      boolean right = start.x() + end.x() > 2 * middle.x();
      place = middle.x() + (right ? out : -out);
    } else {
      double share = (level - start.y()) / (end.y() - start.y());
      place = start.x() + share * (end.x() - start.x());
    }
    double left = Math.min(start.x(), end.x());
    return Math.min(Math.max(left, place), Math.max(start.x(), end.x()));
  }

  /** The part that is not below a level. */
  Optional<Edge> above(double level) {
    if (start.y() < level && end.y() < level) {
      return Optional.empty();
    }
    if (start.y() >= level && end.y() >= level) {
      return Optional.of(this);
    }
    Point cut = Point.of(at(level), level);
    return Optional.of(
        start.y() < level ? new Edge(cut, end, centre) : new Edge(start, cut, centre));
  }

  /**
   * What it adds to the moments of the area that it bounds: triangle to the origin, and segment.
   */
  AreaMoments moments() {
    double x0 = start.x();
    double y0 = start.y();
    double x1 = end.x();
    double y1 = end.y();
    double cross = x0 * y1 - x1 * y0;
    AreaMoments triangle =
        new AreaMoments(
            cross / 2,
            cross * (x0 + x1) / 6,
            cross * (y0 + y1) / 6,
            cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12,
            cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12,
            cross * (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) / 24);
    return centre.map(middle -> triangle.plus(segment(middle))).orElse(triangle);
  }

  /** The piece between chord and arc, counted as missing if the circle is turned clockwise. */
  private AreaMoments segment(Point middle) {
    double ux = start.x() - middle.x();
    double uy = start.y() - middle.y();
    double vx = end.x() - middle.x();
    double vy = end.y() - middle.y();
    double sweep = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    double half = Math.abs(sweep) / 2;
    double direction = Math.atan2(uy + vy, ux + vx);
    double radius = Math.hypot(ux, uy);
    double sine = Math.sin(half);
    double both = sine * Math.cos(half);
    double cube = both * sine * sine;
    double square = radius * radius;
    double area = square * (half - both);
    double out = 2 * square * radius * sine * sine * sine / 3;
    double along = square * square * (half - both + 2 * cube) / 4;
    double across = square * square * (3 * half - 3 * both - 2 * cube) / 12;
    double c = Math.cos(direction);
    double s = Math.sin(direction);
    return new AreaMoments(
            area,
            out * c,
            out * s,
            along * c * c + across * s * s,
            along * s * s + across * c * c,
            (along - across) * c * s)
        .times(Math.signum(sweep))
        .moved(middle.x(), middle.y());
  }
}
