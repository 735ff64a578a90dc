package bellcrank.statics.strength;

import bellcrank.statics.geometry.Point;

/**
 * An area with its first and second moments about the axes of the drawing. Areas are put together
 * by adding these, and holes taken out by subtracting them; moving is the parallel-axis theorem.
 *
 * @param area ∫dA in m²
 * @param firstX ∫x dA in m³
 * @param firstY ∫y dA in m³
 * @param secondX ∫x² dA in m⁴, which resists bending that stretches in x
 * @param secondY ∫y² dA in m⁴, which resists bending that stretches in y
 * @param product ∫xy dA in m⁴
 */
public record AreaMoments(
    double area, double firstX, double firstY, double secondX, double secondY, double product) {

  /** No area. */
  public static final AreaMoments NONE = new AreaMoments(0, 0, 0, 0, 0, 0);

  /**
   * Those of an area whose values about its own centroid are known, such as one from a table.
   *
   * @param area in m²
   * @param centroid place of its centroid
   * @param secondX ∫x² dA about the centroid in m⁴
   * @param secondY ∫y² dA about the centroid in m⁴
   * @param product ∫xy dA about the centroid in m⁴; 0 if one axis is an axis of symmetry
   * @return the moments about the axes of the drawing
   */
  public static AreaMoments of(
      double area, Point centroid, double secondX, double secondY, double product) {
    return new AreaMoments(area, 0, 0, secondX, secondY, product).moved(centroid.x(), centroid.y());
  }

  /**
   * Both areas together.
   *
   * @param other another area
   * @return the sum
   */
  public AreaMoments plus(AreaMoments other) {
    return new AreaMoments(
        area + other.area,
        firstX + other.firstX,
        firstY + other.firstY,
        secondX + other.secondX,
        secondY + other.secondY,
        product + other.product);
  }

  /**
   * This area without another that lies in it.
   *
   * @param other what is taken out
   * @return the difference
   */
  public AreaMoments minus(AreaMoments other) {
    return plus(other.times(-1));
  }

  /**
   * Several times this area at the same place.
   *
   * @param factor how often; −1 makes a hole of it
   * @return the product
   */
  public AreaMoments times(double factor) {
    return new AreaMoments(
        factor * area,
        factor * firstX,
        factor * firstY,
        factor * secondX,
        factor * secondY,
        factor * product);
  }

  /**
   * The same area elsewhere.
   *
   * @param dx how far it is moved along x in m
   * @param dy how far it is moved along y in m
   * @return the moments about the axes that stayed
   */
  public AreaMoments moved(double dx, double dy) {
    return new AreaMoments(
        area,
        firstX + area * dx,
        firstY + area * dy,
        secondX + 2 * dx * firstX + area * dx * dx,
        secondY + 2 * dy * firstY + area * dy * dy,
        product + dx * firstY + dy * firstX + area * dx * dy);
  }

  /**
   * The centroid.
   *
   * @return its place
   */
  public Point centroid() {
    return Point.of(firstX / area, firstY / area);
  }

  /**
   * The moments about the axes through the centroid.
   *
   * @return the moments, with no first ones
   */
  public AreaMoments aboutCentroid() {
    Point centroid = centroid();
    AreaMoments moved = moved(-centroid.x(), -centroid.y());
    return new AreaMoments(area, 0, 0, moved.secondX, moved.secondY, moved.product);
  }
}
