package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws distances and angles. */
final class DimensionShapes {

  /** Distance of a line of dimensions from what is drawn. */
  private static final double CLEAR = 30;

  /** Distances shorter than this on the sheet are left to the others. */
  private static final double SHORTEST = 3;

  /** A chain of more distances than this is drawn as one. */
  private static final int LONGEST_CHAIN = 5;

  private static final double ARC = 30;

  private final Scene scene;
  private final View view;
  private final Amount amount;

  DimensionShapes(Scene scene, View view, Amount amount) {
    this.scene = scene;
    this.view = view;
    this.amount = amount;
  }

  /** Chains of distances between places, below and to the left of what is drawn by now. */
  void chains(List<Point> places) {
    List<Point> across = distinct(places, true);
    List<Point> upright = distinct(places, false);
    Room drawn = scene.bounds();
    if (across.size() > 1) {
      level(across, drawn.bottom() + CLEAR);
    }
    if (upright.size() > 1) {
      upright(upright, drawn.left() - CLEAR);
    }
  }

  /** The places that are farthest left, right, down and up. */
  static List<Point> outermost(List<Point> places) {
    List<Point> outer = new ArrayList<>();
    Comparator<Point> across = Comparator.comparingDouble(Point::x);
    Comparator<Point> upright = Comparator.comparingDouble(Point::y);
    places.stream().min(across).ifPresent(outer::add);
    places.stream().max(across).ifPresent(outer::add);
    places.stream().min(upright).ifPresent(outer::add);
    places.stream().max(upright).ifPresent(outer::add);
    return outer;
  }

  /** Places in order of x or y, those that are drawn at the same one left out. */
  private List<Point> distinct(List<Point> places, boolean level) {
    List<Point> sorted = new ArrayList<>(places);
    sorted.sort((a, b) -> level ? Double.compare(a.x(), b.x()) : Double.compare(a.y(), b.y()));
    List<Point> distinct = new ArrayList<>();
    for (Point place : sorted) {
      if (distinct.isEmpty()) {
        distinct.add(place);
        continue;
      }
      Point last = distinct.get(distinct.size() - 1);
      double apart = level ? place.x() - last.x() : place.y() - last.y();
      if (apart * view.scale() > SHORTEST) {
        distinct.add(place);
      }
    }
    return distinct.size() > LONGEST_CHAIN + 1
        ? List.of(distinct.get(0), distinct.get(distinct.size() - 1))
        : distinct;
  }

  private void level(List<Point> places, double y) {
    for (int i = 1; i < places.size(); i++) {
      Point a = places.get(i - 1);
      Point b = places.get(i);
      Point start = Point.of(view.at(a).x(), y);
      Point end = Point.of(view.at(b).x(), y);
      extension(view.at(a), start);
      extension(view.at(b), end);
      line(start, end, amount.length(b.x() - a.x()));
    }
  }

  private void upright(List<Point> places, double x) {
    for (int i = 1; i < places.size(); i++) {
      Point a = places.get(i - 1);
      Point b = places.get(i);
      Point start = Point.of(x, view.at(a).y());
      Point end = Point.of(x, view.at(b).y());
      extension(view.at(a), start);
      extension(view.at(b), end);
      line(start, end, amount.length(b.y() - a.y()));
    }
  }

  private void extension(Point from, Point to) {
    Vector way = from.to(to);
    if (way.norm() > 14) {
      Vector unit = way.times(1 / way.norm());
      scene.draw(
          Layer.GHOST, "extension", Pen.line(from.plus(unit.times(8)), to.plus(unit.times(4))));
    }
  }

  /** A dimension line with slanting ticks and its value. */
  private void line(Point start, Point end, String value) {
    scene.draw(Layer.CONSTRUCTION, "measure", Pen.line(start, end));
    Vector tick = Vector.of(3.5, -3.5);
    for (Point point : List.of(start, end)) {
      scene.draw(
          Layer.CONSTRUCTION, "tick", Pen.line(point.plus(tick), point.plus(tick.times(-1))));
    }
    scene.block(start, end, 1);
    scene.label(ForceLabels.along(List.of(value), "measure", start, end));
  }

  /** A measurement as it was asked for. */
  void draw(Measurement wanted, Places places) {
    if (wanted instanceof Measurement.Distance distance) {
      distance(places.of(distance.from()), places.of(distance.to()), distance.way());
    } else if (wanted instanceof Measurement.Angle angle) {
      Point at = places.of(angle.at());
      Vector first = at.to(places.of(angle.first()));
      Vector second = at.to(places.of(angle.second()));
      if (first.norm() > 0 && second.norm() > 0) {
        angle(at, first, second);
      }
    }
  }

  private void distance(Point a, Point b, Measurement.Way way) {
    Room drawn = scene.bounds();
    switch (way) {
      case LEVEL -> level(ordered(a, b, true), drawn.bottom() + CLEAR);
      case UPRIGHT -> upright(ordered(a, b, false), drawn.left() - CLEAR);
      default -> straight(a, b);
    }
  }

  private static List<Point> ordered(Point a, Point b, boolean level) {
    boolean right = level ? a.x() <= b.x() : a.y() <= b.y();
    return right ? List.of(a, b) : List.of(b, a);
  }

  private void straight(Point a, Point b) {
    Vector way = view.at(a).to(view.at(b));
    if (way.norm() == 0) {
      return;
    }
    Vector side = way.perpendicular().times(CLEAR / way.norm());
    // the side on which less is drawn
    Point start = view.at(a).plus(side);
    Point end = view.at(b).plus(side);
    Point otherStart = view.at(a).plus(side.times(-1));
    Point otherEnd = view.at(b).plus(side.times(-1));
    boolean first = scene.crowding(start, end) <= scene.crowding(otherStart, otherEnd);
    extension(view.at(a), first ? start : otherStart);
    extension(view.at(b), first ? end : otherEnd);
    line(first ? start : otherStart, first ? end : otherEnd, amount.length(a.distance(b)));
  }

  /** The angle at a place between two ways of the world. */
  void angle(Point at, Vector first, Vector second) {
    angleOnSheet(view.at(at), first, second);
  }

  private void angleOnSheet(Point vertex, Vector first, Vector second) {
    double start = Math.atan2(first.y(), first.x());
    double swept = Math.atan2(first.cross(second), first.dot(second));
    Pen pen = Pen.from(Pen.on(vertex, ARC, start)).arc(vertex, ARC, start, start + swept);
    scene.draw(Layer.CONSTRUCTION, "measure", pen);
    double middle = start + swept / 2;
    Point on = Pen.on(vertex, ARC, middle);
    scene.block(Pen.on(vertex, ARC, start), on, 1);
    scene.block(on, Pen.on(vertex, ARC, start + swept), 1);
    Vector out = Vector.of(Math.cos(middle), -Math.sin(middle));
    List<Label.Try> tries =
        List.of(new Label.Try(on, out, 3), new Label.Try(on, out, 10), new Label.Try(on, out, 22));
    scene.label(new Label(List.of(amount.angle(Math.abs(swept))), "measure", on, tries));
  }

  /** The slope of a force: its acute angle to the level, on the side on which its arrow lies. */
  void slope(Point at, Arrow arrow) {
    Point place = view.at(at);
    boolean pulls = arrow.tail().distance(place) <= arrow.tip().distance(place);
    // an arrow that was moved aside does not begin at the place of its force
    Point near = pulls ? arrow.tail() : arrow.tip();
    Vector seen = near.to(pulls ? arrow.tip() : arrow.tail());
    Vector way = Vector.of(seen.x(), -seen.y());
    Vector level = Vector.of(Math.signum(way.x()), 0);
    scene.draw(Layer.CONSTRUCTION, "measure", Pen.line(near, near.plus(level.times(ARC + 12))));
    angleOnSheet(near, level, way);
  }
}
