package bellcrank.statics.explain;

import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/** The straight parts of a rope between the circles that it runs round. */
final class RopeParts {

  private RopeParts() {}

  /** Tensions of the straight parts over that of the first. */
  static List<Double> multiples(Reeving rope) {
    double step =
        switch (rope.hauling()) {
          case IDEAL -> 1;
          case RAISING -> rope.efficiency();
          case LOWERING -> 1 / rope.efficiency();
        };
    List<Double> multiples = new ArrayList<>();
    double multiple = 1;
    for (int part = 1; part < rope.stops().size(); part++) {
      multiples.add(multiple);
      multiple *= step;
    }
    return multiples;
  }

  static List<Link> of(List<Stop> stops, List<Double> multiples, Bodies bodies) {
    List<Link> links = new ArrayList<>();
    for (int part = 1; part < stops.size(); part++) {
      links.add(part(stops.get(part - 1), stops.get(part), multiples.get(part - 1), bodies));
    }
    return links;
  }

  private static Link part(Stop from, Stop to, double multiple, Bodies bodies) {
    Point a = bodies.place(from.body(), from.at());
    Point b = bodies.place(to.body(), to.at());
    double r1 = from.turn().sign() * from.radius();
    double r2 = to.turn().sign() * to.radius();
    Vector d = a.to(b);
    double squared = d.dot(d);
    double gap = r1 - r2;
    double tangent = Math.sqrt(Math.max(0, squared - gap * gap));
    // a circle run round counter-clockwise lies to the left of the rope
    Vector u =
        squared > 0
            ? d.times(tangent / squared).plus(d.perpendicular().times(gap / squared))
            : Vector.ZERO;
    Vector right = u.perpendicular().times(-1);
    return new Link(
        bodies.number(from.body()),
        bodies.number(to.body()),
        a.plus(right.times(r1)),
        b.plus(right.times(r2)),
        u.times(multiple),
        0);
  }
}
