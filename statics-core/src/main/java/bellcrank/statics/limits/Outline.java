package bellcrank.statics.limits;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.Goal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Outline of all pairs of two components over the states: a convex polygon, found corner by corner.
 * Between two neighbouring corners the farthest state square to the line between them is sought; if
 * there is none beyond the line, it is a side.
 */
final class Outline {

  /** Distance beyond a side, relative to the largest component, that counts as none. */
  private static final double FLAT = 1e-9;

  /** More corners than this are not looked for; curved outlines of dry pins have no end of them. */
  private static final int MOST_CORNERS = 400;

  /** Directions between two ends, in rad; the second is not below the first. */
  record Between(double from, double to) {}

  private final LinearAsks.Form x;
  private final LinearAsks.Form y;
  private final Function<Goal, Extreme> greatest;
  private final List<Point> corners = new ArrayList<>();
  private int found;
  private boolean unbounded;
  private boolean open;

  private Outline(LinearAsks.Form x, LinearAsks.Form y, Function<Goal, Extreme> greatest) {
    this.x = x;
    this.y = y;
    this.greatest = greatest;
    Vector[] sides = {Vector.of(1, 0), Vector.of(0, 1), Vector.of(-1, 0), Vector.of(0, -1)};
    List<Point> first = new ArrayList<>();
    for (Vector side : sides) {
      farthest(side).ifPresent(first::add);
    }
    if (unbounded || open) {
      return;
    }
    for (int k = 0; k < first.size(); k++) {
      corners.add(first.get(k));
      refine(first.get(k), first.get((k + 1) % first.size()));
    }
  }

  static Outline of(LinearAsks.Form x, LinearAsks.Form y, Function<Goal, Extreme> greatest) {
    return new Outline(x, y, greatest);
  }

  private Optional<Point> farthest(Vector way) {
    Extreme extreme = greatest.apply(x.goal().times(way.x()).plus(y.goal(), way.y()));
    unbounded |= extreme.kind() == Extreme.Kind.UNBOUNDED;
    open |= extreme.kind() == Extreme.Kind.OPEN || extreme.kind() == Extreme.Kind.NONE;
    return extreme.isFound()
        ? Optional.of(Point.of(x.at(extreme.forces()), y.at(extreme.forces())))
        : Optional.empty();
  }

  private void refine(Point a, Point b) {
    Vector side = a.to(b);
    double size = Math.max(Math.max(a.distance(Point.ORIGIN), b.distance(Point.ORIGIN)), 1e-300);
    if (side.norm() <= FLAT * size || found > MOST_CORNERS) {
      return;
    }
    // the corners run round counter-clockwise, so the outside is to the right
    Vector out = side.perpendicular().times(-1 / side.norm());
    Point corner = farthest(out).orElse(a);
    if (a.to(corner).dot(out) > FLAT * size) {
      // counted before it is added: of forces that are rounding there is a corner on every way
      found++;
      refine(a, corner);
      corners.add(corner);
      refine(corner, b);
    }
  }

  /** Whether the search ended too early to tell. */
  boolean isOpen() {
    return open;
  }

  /** Distance of the nearest pair from zero. */
  double nearest() {
    if (unbounded) {
      return nearestOfUnbounded();
    }
    if (inside()) {
      return 0;
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < corners.size(); k++) {
      Point a = corners.get(k);
      Vector side = a.to(corners.get((k + 1) % corners.size()));
      double squared = side.dot(side);
      double share = squared > 0 ? a.to(Point.ORIGIN).dot(side) / squared : 0;
      Point at = a.plus(side.times(Math.max(0, Math.min(1, share))));
      nearest = Math.min(nearest, at.distance(Point.ORIGIN));
    }
    return nearest;
  }

  /** Of an outline without end, by lines that separate it from zero. */
  private double nearestOfUnbounded() {
    double best = 0;
    Vector way = Vector.of(1, 0);
    for (int k = 0; k < 360; k++) {
      double angle = Math.toRadians(k);
      Vector out = Vector.of(Math.cos(angle), Math.sin(angle));
      Extreme extreme = greatest.apply(x.goal().times(out.x()).plus(y.goal(), out.y()));
      if (extreme.isFound()) {
        Point at = Point.of(x.at(extreme.forces()), y.at(extreme.forces()));
        double apart = -Point.ORIGIN.to(at).dot(out);
        if (apart > best) {
          best = apart;
          way = out;
        }
      }
    }
    return best == 0 ? 0 : refined(way, best);
  }

  private double refined(Vector start, double distance) {
    double step = Math.toRadians(1);
    double angle = Math.atan2(start.y(), start.x());
    double best = distance;
    while (step > 1e-10) {
      boolean better = false;
      for (int side = -1; side <= 1; side += 2) {
        double tried = angle + side * step;
        Vector out = Vector.of(Math.cos(tried), Math.sin(tried));
        Point at = farthest(out).orElse(Point.ORIGIN);
        double apart = -Point.ORIGIN.to(at).dot(out);
        if (apart > best) {
          best = apart;
          angle = tried;
          better = true;
        }
      }
      step = better ? step : step / 2;
    }
    return best;
  }

  private boolean inside() {
    for (int k = 0; k < corners.size(); k++) {
      Vector side = corners.get(k).to(corners.get((k + 1) % corners.size()));
      Vector toZero = corners.get(k).to(Point.ORIGIN);
      if (side.cross(toZero) < 0) {
        return false;
      }
    }
    return corners.size() > 2 && area() > 0;
  }

  private double area() {
    double sum = 0;
    for (int k = 1; k + 1 < corners.size(); k++) {
      sum += corners.get(0).to(corners.get(k)).cross(corners.get(0).to(corners.get(k + 1)));
    }
    return sum;
  }

  /** Distance of the farthest pair from zero; empty if there is no end. */
  OptionalDouble farthest() {
    return unbounded
        ? OptionalDouble.empty()
        : corners.stream().mapToDouble(one -> one.distance(Point.ORIGIN)).max();
  }

  /** Directions of all pairs; empty if zero is among them or there is no end. */
  Optional<Between> directions() {
    double largest = farthest().orElse(0);
    if (unbounded || nearest() <= FLAT * largest) {
      return Optional.empty();
    }
    Vector first = Point.ORIGIN.to(corners.get(0));
    double low = 0;
    double high = 0;
    for (Point corner : corners) {
      Vector to = Point.ORIGIN.to(corner);
      double turned = Math.atan2(first.cross(to), first.dot(to));
      low = Math.min(low, turned);
      high = Math.max(high, turned);
    }
    double start = Math.atan2(first.y(), first.x()) + low;
    double from = start < 0 ? start + 2 * Math.PI : start;
    return Optional.of(new Between(from, from + high - low));
  }
}
