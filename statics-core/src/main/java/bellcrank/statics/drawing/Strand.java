package bellcrank.statics.drawing;

import bellcrank.statics.device.Stop;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight part of a rope: the tangent of the circles at two stops.
 *
 * @param first the stop that it leaves
 * @param second the stop that it comes to
 * @param start where it leaves
 * @param end where it comes
 * @param along unit vector from start to end; zero if both stops have one centre
 */
record Strand(Stop first, Stop second, Point start, Point end, Vector along) {

  static List<Strand> of(Places places, List<Stop> stops) {
    List<Strand> strands = new ArrayList<>();
    for (int i = 1; i < stops.size(); i++) {
      strands.add(between(places, stops.get(i - 1), stops.get(i)));
    }
    return strands;
  }

  private static Strand between(Places places, Stop first, Stop second) {
    Point a = places.of(first.body(), first.at());
    Point b = places.of(second.body(), second.at());
    double r1 = first.turn().sign() * first.radius();
    double r2 = second.turn().sign() * second.radius();
    Vector d = a.to(b);
    double squared = d.dot(d);
    double gap = r1 - r2;
    double tangent = Math.sqrt(Math.max(0, squared - gap * gap));
    // a circle run round counter-clockwise lies to the left of the rope
    Vector along =
        squared > 0
            ? d.times(tangent / squared).plus(d.perpendicular().times(gap / squared))
            : Vector.ZERO;
    Vector right = along.perpendicular().times(-1);
    return new Strand(first, second, a.plus(right.times(r1)), b.plus(right.times(r2)), along);
  }
}
