package bellcrank.statics.strength;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the shear stress V·Q/(I·t) is greatest: at the centroid, or beside a corner of the outline
 * where the material is narrower, such as the edge of a hole.
 */
record ShearPlace(double firstMoment, double width) {

  /** How far beside a corner the width is taken, in heights of the section. */
  private static final double BESIDE = 1e-9;

  /** Material narrower than this share of the height is a tip, which carries no shear. */
  private static final double TIP = 1e-6;

  static ShearPlace of(Shape shape, double centroid) {
    List<Double> levels = shape.levels();
    double height = levels.get(levels.size() - 1) - levels.get(0);
    List<Double> places = new ArrayList<>(levels);
    places.add(centroid);
    ShearPlace greatest = new ShearPlace(0, 1);
    for (double place : places) {
      double below = shape.width(place - BESIDE * height);
      double above = shape.width(place + BESIDE * height);
      AreaMoments part = shape.above(place).moments();
      double first = Math.abs(part.firstY() - centroid * part.area());
      for (double width : List.of(below, above)) {
        if (width > TIP * height && first * greatest.width > greatest.firstMoment * width) {
          greatest = new ShearPlace(first, width);
        }
      }
    }
    return greatest;
  }
}
