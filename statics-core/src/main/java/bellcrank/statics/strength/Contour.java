package bellcrank.statics.strength;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A closed outline. Counter-clockwise it bounds material, clockwise it takes material away. */
record Contour(List<Edge> edges) {

  Contour {
    edges = List.copyOf(edges);
  }

  static Contour through(List<Point> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(Edge.straight(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Contour(edges);
  }

  AreaMoments moments() {
    // about a corner first: far from the origin the differences would drown
    Point corner = edges.get(0).start();
    AreaMoments sum = AreaMoments.NONE;
    for (Edge edge : edges) {
      sum = sum.plus(edge.moved(-corner.x(), -corner.y()).moments());
    }
    return sum.moved(corner.x(), corner.y());
  }

  Contour reversed() {
    List<Edge> back = new ArrayList<>(each(Edge::reversed).edges);
    Collections.reverse(back);
    return new Contour(back);
  }

  Contour moved(double dx, double dy) {
    return each(edge -> edge.moved(dx, dy));
  }

  Contour turned() {
    return each(Edge::turned);
  }

  Contour mirrored() {
    List<Edge> back = new ArrayList<>(each(Edge::mirrored).edges);
    Collections.reverse(back);
    return new Contour(back);
  }

  private Contour each(UnaryOperator<Edge> change) {
    return new Contour(edges.stream().map(change).toList());
  }

  /**
   * What is not below a level. Pieces that are left are joined along the level; where such joins
   * lie upon each other they bound nothing.
   */
  Optional<Contour> above(double level) {
    List<Edge> kept = new ArrayList<>();
    for (Edge edge : edges) {
      Optional<Edge> part = edge.above(level);
      if (part.isPresent()) {
        join(kept, part.get().start());
        kept.add(part.get());
      }
    }
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    join(kept, kept.get(0).start());
    return Optional.of(new Contour(kept));
  }

  private static void join(List<Edge> kept, Point next) {
    if (!kept.isEmpty()) {
      Point last = kept.get(kept.size() - 1).end();
      if (!last.equals(next)) {
        kept.add(Edge.straight(last, next));
      }
    }
  }
}
