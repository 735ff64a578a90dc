package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A plane area with straight and round edges, put together from simple ones; its moments are exact.
 * x points to the right, y up, lengths are in m.
 */
public final class Shape {

  private final List<Contour> contours;

  private Shape(List<Contour> contours) {
    this.contours = List.copyOf(contours);
  }

  /**
   * A rectangle.
   *
   * @param left x of its left edge in m
   * @param bottom y of its lower edge in m
   * @param width its width in m, above 0
   * @param height its height in m, above 0
   * @return the area
   * @throws ModelException if a size is not above 0
   */
  public static Shape rectangle(double left, double bottom, double width, double height) {
    SectionLength.positive("rectangle", "width", width);
    SectionLength.positive("rectangle", "height", height);
    return polygon(
        List.of(
            Point.of(left, bottom),
            Point.of(left + width, bottom),
            Point.of(left + width, bottom + height),
            Point.of(left, bottom + height)));
  }

  /**
   * A disc.
   *
   * @param x x of its centre in m
   * @param y y of its centre in m
   * @param diameter its diameter in m, above 0
   * @return the area
   * @throws ModelException if the diameter is not above 0
   */
  public static Shape disc(double x, double y, double diameter) {
    double radius = SectionLength.positive("disc", "diameter", diameter) / 2;
    Point centre = Point.of(x, y);
    Point right = Point.of(x + radius, y);
    Point top = Point.of(x, y + radius);
    Point left = Point.of(x - radius, y);
    Point bottom = Point.of(x, y - radius);
    return new Shape(
        List.of(
            new Contour(
                List.of(
                    Edge.arc(right, top, centre),
                    Edge.arc(top, left, centre),
                    Edge.arc(left, bottom, centre),
                    Edge.arc(bottom, right, centre)))));
  }

  /**
   * The fillet in an inner corner: what lies between the two walls and an arc that touches both.
   *
   * @param x x of the corner in m
   * @param y y of the corner in m
   * @param dx radius in m, above 0 if the fillet lies to the right of the corner, below if left
   * @param dy the same radius, above 0 if the fillet lies above the corner, below 0 if below
   * @return the area
   * @throws ModelException if the two are no radius of one size
   */
  public static Shape fillet(double x, double y, double dx, double dy) {
    if (!(Math.abs(dx) > 0 && Math.abs(dx) == Math.abs(dy))) {
      throw new ModelException("fillet", "radius", dx + ", " + dy, "one size, any signs");
    }
    Contour contour =
        new Contour(
            List.of(
                Edge.straight(Point.of(x, y), Point.of(x + dx, y)),
                Edge.arc(Point.of(x + dx, y), Point.of(x, y + dy), Point.of(x + dx, y + dy)),
                Edge.straight(Point.of(x, y + dy), Point.of(x, y))));
    return new Shape(List.of(contour.moments().area() < 0 ? contour.reversed() : contour));
  }

  /**
   * An area with straight edges.
   *
   * @param corners its corners in order, either way round, three or more
   * @return the area
   * @throws ModelException if the corners bound nothing
   */
  public static Shape polygon(List<Point> corners) {
    if (corners.size() < 3) {
      throw new ModelException("polygon", "corners", corners.size(), "three or more");
    }
    Contour contour = Contour.through(corners);
    double area = contour.moments().area();
    if (area == 0) {
      throw new ModelException("polygon", "area", area, "corners that bound an area");
    }
    return new Shape(List.of(area < 0 ? contour.reversed() : contour));
  }

  /**
   * This area and another beside it.
   *
   * @param other an area that does not lie upon this one; edges may touch
   * @return both
   * @throws ModelException if they overlap, so that a part would count twice
   */
  public Shape and(Shape other) {
    Shape both = new Shape(Stream.concat(contours.stream(), other.contours.stream()).toList());
    return Layers.single(both, "areas put together", "areas that do not overlap");
  }

  /**
   * This area with a hole.
   *
   * @param hole an area that lies within this one
   * @return what is left
   * @throws ModelException if a part of the hole lies where there is nothing
   */
  public Shape without(Shape hole) {
    Stream<Contour> away = hole.contours.stream().map(Contour::reversed);
    Shape left = new Shape(Stream.concat(contours.stream(), away).toList());
    return Layers.single(left, "hole", "a hole that lies within the area");
  }

  /**
   * The part within a rectangle.
   *
   * @param left x of its left edge in m
   * @param bottom y of its lower edge in m
   * @param width its width in m, above 0
   * @param height its height in m, above 0
   * @return the part; it may be nothing
   */
  public Shape within(double left, double bottom, double width, double height) {
    return above(bottom)
        .below(bottom + height)
        .turned()
        .above(left)
        .below(left + width)
        .turned()
        .turned()
        .turned();
  }

  /**
   * This area with all that lies within a rectangle taken away, such as a bolt hole seen from the
   * side.
   *
   * @param left x of its left edge in m
   * @param bottom y of its lower edge in m
   * @param width its width in m, above 0
   * @param height its height in m, above 0
   * @return what is left
   */
  public Shape cut(double left, double bottom, double width, double height) {
    Stream<Contour> away =
        within(left, bottom, width, height).contours.stream().map(Contour::reversed);
    return new Shape(Stream.concat(contours.stream(), away).toList());
  }

  /**
   * The part above a level.
   *
   * @param level y of the level in m
   * @return the part; it may be nothing
   */
  public Shape above(double level) {
    return new Shape(contours.stream().flatMap(one -> one.above(level).stream()).toList());
  }

  /**
   * The part below a level.
   *
   * @param level y of the level in m
   * @return the part; it may be nothing
   */
  public Shape below(double level) {
    return turned().turned().above(-level).turned().turned();
  }

  /**
   * The same area elsewhere.
   *
   * @param dx how far it is moved to the right in m
   * @param dy how far it is moved up in m
   * @return the moved area
   */
  public Shape moved(double dx, double dy) {
    return each(one -> one.moved(dx, dy));
  }

  /**
   * Turned by a quarter, counter-clockwise about the origin.
   *
   * @return the turned area
   */
  public Shape turned() {
    return each(Contour::turned);
  }

  /**
   * With left and right exchanged about the y axis.
   *
   * @return the mirrored area
   */
  public Shape mirrored() {
    return each(Contour::mirrored);
  }

  private Shape each(UnaryOperator<Contour> change) {
    return new Shape(contours.stream().map(change).toList());
  }

  /**
   * Area and moments about the axes of the drawing.
   *
   * @return the moments
   */
  public AreaMoments moments() {
    return contours.stream().map(Contour::moments).reduce(AreaMoments.NONE, AreaMoments::plus);
  }

  /**
   * How wide the material is at a level, all pieces together. Where an edge lies along the level it
   * is not told apart which side of it is meant.
   *
   * @param level y of the level in m
   * @return in m, 0 or more
   */
  public double width(double level) {
    double width = 0;
    for (Edge edge : crossing(level)) {
      width += edge.enters() ? -edge.at(level) : edge.at(level);
    }
    return Math.max(0, width);
  }

  /** The edges that cross a level. */
  List<Edge> crossing(double level) {
    List<Edge> crossing = new ArrayList<>();
    for (Contour contour : contours) {
      for (Edge edge : contour.edges()) {
        if (edge.crosses(level)) {
          crossing.add(edge);
        }
      }
    }
    return crossing;
  }

  /** The levels of all corners, from the lowest up, each once. */
  List<Double> levels() {
    return contours.stream()
        .flatMap(contour -> contour.edges().stream())
        .map(edge -> edge.start().y())
        .distinct()
        .sorted()
        .toList();
  }
}
