package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Cross-sections of usual forms from their sizes, all in m. The height lies in the plane of the
 * device. Inner corners are sharp unless a radius is given; outer corners of rolled sections, which
 * are rounded a little, are taken as sharp.
 */
public final class Profiles {

  private static final String OF_WIDTH = ", half of the width; all sizes in m";
  private static final String OF_HEIGHT = ", half of the height; all sizes in m";

  private Profiles() {}

  /**
   * A solid rectangle, such as a plank.
   *
   * @param width width in m, above 0
   * @param height height in m, above 0
   * @return the profile
   * @throws ModelException if a size is not above 0
   */
  public static Profile rectangle(double width, double height) {
    String name = name("rectangle", width, height);
    SectionLength.positive(name, "width", width);
    SectionLength.positive(name, "height", height);
    return new Profile(name, Shape.rectangle(0, 0, width, height), Math.min(width, height));
  }

  /**
   * A solid round bar.
   *
   * @param diameter diameter in m, above 0
   * @return the profile
   * @throws ModelException if the diameter is not above 0
   */
  public static Profile round(double diameter) {
    String name = name("round", diameter);
    SectionLength.positive(name, "diameter", diameter);
    return new Profile(name, Shape.disc(0, 0, diameter), diameter);
  }

  /**
   * A round pipe.
   *
   * @param diameter outside diameter in m, above 0
   * @param wall thickness of the wall in m, above 0 and below half of the diameter
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile pipe(double diameter, double wall) {
    String name = name("pipe", diameter, wall);
    SectionLength.positive(name, "diameter", diameter);
    SectionLength.below(name, "wall", wall, diameter / 2, ", half of the diameter; both in m");
    Shape hole = Shape.disc(0, 0, diameter - 2 * wall);
    return new Profile(name, Shape.disc(0, 0, diameter).without(hole), wall);
  }

  /**
   * A rectangular tube with sharp corners, such as one welded from plates.
   *
   * @param width outside width in m, above 0
   * @param height outside height in m, above 0
   * @param wall thickness of the wall in m, above 0 and below half of width and height
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile tube(double width, double height, double wall) {
    return tube(width, height, wall, 0, 0);
  }

  /**
   * A cold-formed rectangular tube with corners as American design practice takes them for
   * properties: radius 2·wall outside, 1·wall inside. The wall to be used there is the design wall,
   * 0.93 of the nominal one for A500. Source: AISC Manual, notes to the tables of hollow sections.
   *
   * @param width outside width in m, above 0
   * @param height outside height in m, above 0
   * @param wall thickness of the wall in m, above 0 and at most a quarter of width and height
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile formedTube(double width, double height, double wall) {
    String name = name("tube", width, height, wall);
    SectionLength.positive(name, "width", width);
    SectionLength.positive(name, "height", height);
    double narrow =
        SectionLength.upTo(
            name, "wall", wall, width / 4, ", a quarter of the width, for its corners");
    double thick =
        SectionLength.upTo(
            name, "wall", narrow, height / 4, ", a quarter of the height, for its corners");
    return tube(width, height, thick, 2 * thick, thick);
  }

  /**
   * A rectangular tube with rounded corners.
   *
   * @param width outside width in m, above 0
   * @param height outside height in m, above 0
   * @param wall thickness of the wall in m, above 0 and below half of width and height
   * @param outerRadius radius of the corners outside in m, from 0 to half of width and height
   * @param innerRadius radius of the corners inside in m, 0 or more
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile tube(
      double width, double height, double wall, double outerRadius, double innerRadius) {
    String name = name("tube", width, height, wall);
    SectionLength.positive(name, "width", width);
    SectionLength.positive(name, "height", height);
    SectionLength.below(name, "wall", wall, width / 2, OF_WIDTH);
    SectionLength.below(name, "wall", wall, height / 2, OF_HEIGHT);
    double half = Math.min(width, height) / 2;
    double outer =
        SectionLength.orNone(name, "outer radius", outerRadius, half, ", half of the smaller side");
    double inner =
        SectionLength.orNone(
            name, "inner radius", innerRadius, half - wall, ", half of what is free inside");
    Shape outside = rounded(0, 0, width, height, outer);
    Shape inside = rounded(wall, wall, width - 2 * wall, height - 2 * wall, inner);
    return new Profile(name, outside.without(inside), wall);
  }

  private static Shape rounded(double left, double bottom, double width, double height, double r) {
    Shape box = Shape.rectangle(left, bottom, width, height);
    if (r == 0) {
      return box;
    }
    double right = left + width;
    double top = bottom + height;
    return box.without(Shape.fillet(left, bottom, r, r))
        .without(Shape.fillet(right, bottom, -r, r))
        .without(Shape.fillet(right, top, -r, -r))
        .without(Shape.fillet(left, top, r, -r));
  }

  /**
   * An angle with sharp corners: an upright leg on the left, a level one at the bottom.
   *
   * @param width length of the level leg outside in m, above 0
   * @param height length of the upright leg outside in m, above 0
   * @param thickness thickness of both legs in m, above 0, below both lengths
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile angle(double width, double height, double thickness) {
    return angle(width, height, thickness, 0);
  }

  /**
   * An angle with a rounded inner corner.
   *
   * @param width length of the level leg outside in m, above 0
   * @param height length of the upright leg outside in m, above 0
   * @param thickness thickness of both legs in m, above 0, below both lengths
   * @param rootRadius radius of the inner corner in m, 0 or more, within both legs
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile angle(double width, double height, double thickness, double rootRadius) {
    String name = name("angle", height, width, thickness);
    double shorter =
        Math.min(
            SectionLength.positive(name, "width", width),
            SectionLength.positive(name, "height", height));
    SectionLength.below(name, "thickness", thickness, shorter, ", the shorter leg; all sizes in m");
    double root = root(name, rootRadius, shorter - thickness);
    Shape legs =
        Shape.rectangle(0, 0, width, thickness)
            .and(Shape.rectangle(0, thickness, thickness, height - thickness));
    return new Profile(name, filled(legs, thickness, thickness, root, root), thickness);
  }

  /**
   * A channel with its web upright on the left. The flanges are of even thickness.
   *
   * @param depth depth over the flanges in m, above 0
   * @param width width of the flanges in m, above 0
   * @param web thickness of the web in m, above 0, below the width
   * @param flange thickness of a flange in m, above 0, below half of the depth
   * @param rootRadius radius of the two inner corners in m, 0 or more; 0 if they are sharp
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile channel(
      double depth, double width, double web, double flange, double rootRadius) {
    String name = name("channel", depth, width, web, flange);
    flanges(name, depth, width, web, flange);
    double root = root(name, rootRadius, Math.min(width - web, depth / 2 - flange));
    double free = depth - 2 * flange;
    Shape sharp =
        Shape.rectangle(0, 0, width, flange)
            .and(Shape.rectangle(0, flange, web, free))
            .and(Shape.rectangle(0, flange + free, width, flange));
    Shape lower = filled(sharp, web, flange, root, root);
    Shape shape = filled(lower, web, depth - flange, root, -root);
    return new Profile(name, shape, Math.max(web, flange));
  }

  /**
   * An I or H with two equal flanges of even thickness.
   *
   * @param depth depth over the flanges in m, above 0
   * @param width width of the flanges in m, above 0
   * @param web thickness of the web in m, above 0, below the width
   * @param flange thickness of a flange in m, above 0, below half of the depth
   * @param rootRadius radius of the four inner corners in m, 0 or more; 0 if they are sharp
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile beam(
      double depth, double width, double web, double flange, double rootRadius) {
    String name = name("I", depth, width, web, flange);
    flanges(name, depth, width, web, flange);
    double root = root(name, rootRadius, Math.min((width - web) / 2, depth / 2 - flange));
    double free = depth - 2 * flange;
    Shape shape =
        Shape.rectangle(-width / 2, 0, width, flange)
            .and(Shape.rectangle(-web / 2, flange, web, free))
            .and(Shape.rectangle(-width / 2, flange + free, width, flange));
    shape = filled(shape, -web / 2, flange, -root, root);
    shape = filled(shape, web / 2, flange, root, root);
    shape = filled(shape, -web / 2, depth - flange, -root, -root);
    shape = filled(shape, web / 2, depth - flange, root, -root);
    return new Profile(name, shape, Math.max(web, flange));
  }

  /**
   * A T with its flange on top.
   *
   * @param depth depth over all in m, above 0
   * @param width width of the flange in m, above 0
   * @param stem thickness of the stem in m, above 0, below the width
   * @param flange thickness of the flange in m, above 0, below the depth
   * @param rootRadius radius of the two inner corners in m, 0 or more; 0 if they are sharp
   * @return the profile
   * @throws ModelException if a size is out of its range
   */
  public static Profile tee(
      double depth, double width, double stem, double flange, double rootRadius) {
    String name = name("T", depth, width, stem, flange);
    SectionLength.positive(name, "depth", depth);
    SectionLength.positive(name, "width", width);
    SectionLength.below(name, "stem", stem, width, ", the width; all sizes in m");
    SectionLength.below(name, "flange", flange, depth, ", the depth; all sizes in m");
    double root = root(name, rootRadius, Math.min((width - stem) / 2, depth - flange));
    double free = depth - flange;
    Shape shape =
        Shape.rectangle(-stem / 2, 0, stem, free)
            .and(Shape.rectangle(-width / 2, free, width, flange));
    shape = filled(shape, -stem / 2, free, -root, -root);
    shape = filled(shape, stem / 2, free, root, -root);
    return new Profile(name, shape, Math.max(stem, flange));
  }

  private static void flanges(String name, double depth, double width, double web, double flange) {
    SectionLength.positive(name, "depth", depth);
    SectionLength.positive(name, "width", width);
    SectionLength.below(name, "web", web, width, ", the width; all sizes in m");
    SectionLength.below(name, "flange", flange, depth / 2, ", half of the depth; all sizes in m");
  }

  private static double root(String name, double radius, double free) {
    return SectionLength.orNone(
        name, "root radius", radius, free, ", what is free beside the corner");
  }

  private static Shape filled(Shape shape, double x, double y, double dx, double dy) {
    return dx == 0 ? shape : shape.and(Shape.fillet(x, y, dx, dy));
  }

  /** Such as "tube 60 × 40 × 3 mm". */
  private static String name(String form, double... sizes) {
    return form
        + DoubleStream.of(sizes)
            .mapToObj(Profiles::millimetres)
            .collect(Collectors.joining(" × ", " ", " mm"));
  }

  private static String millimetres(double metres) {
    return Double.isFinite(metres)
        ? BigDecimal.valueOf(metres)
            .movePointRight(3)
            .round(new MathContext(4))
            .stripTrailingZeros()
            .toPlainString()
        : String.valueOf(metres);
  }
}
