package bellcrank.statics.drawing;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Member;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws members: bars, outlines, and what stands off them. */
record MemberShapes(Scene scene, View view, Places places) {

  /** Points farther from the bars than this are tied to them by a thin piece. */
  private static final double OFF = 7;

  /**
   * Draws a member.
   *
   * @param further places of the world that belong to it as well
   */
  void draw(Member member, List<Point> further) {
    List<Obstacle> own = new ArrayList<>();
    List<Point> round = sheet(member, member.outline());
    if (round.isEmpty() && member.bars().isEmpty()) {
      round = hull(sheet(member, member.points()));
    }
    if (round.size() == 2 || (round.size() == 1 && member.bars().isEmpty())) {
      bars(List.of(new Obstacle(round.get(0), round.get(round.size() - 1), 1)), own);
    } else if (round.size() > 2) {
      plate(round, own);
    }
    bars(member.bars().stream().map(bar -> bar(member, bar)).toList(), own);
    for (Point point : sheet(member, member.points())) {
      stub(point, own);
    }
    further.forEach(place -> stub(view.at(place), own));
    own.forEach(one -> scene.block(one.start(), one.end(), one.weight()));
  }

  /** Draws where a member would be in another pose. */
  void ghost(Member member) {
    List<Point> round = sheet(member, member.outline());
    if (round.isEmpty() && member.bars().isEmpty()) {
      round = hull(sheet(member, member.points()));
    }
    if (round.size() > 1) {
      Pen pen = Pen.from(round.get(0));
      round.subList(1, round.size()).forEach(pen::to);
      scene.draw(Layer.GHOST, "ghost", pen.close());
    }
    for (Bar one : member.bars()) {
      Obstacle bar = bar(member, one);
      scene.draw(Layer.GHOST, "ghost", Pen.line(bar.start(), bar.end()));
    }
  }

  private List<Point> sheet(Member member, List<String> points) {
    return points.stream().map(point -> view.at(places.of(member.name(), point))).toList();
  }

  private Obstacle bar(Member member, Bar bar) {
    return new Obstacle(
        view.at(places.of(member.name(), bar.start())),
        view.at(places.of(member.name(), bar.end())),
        1);
  }

  private void plate(List<Point> round, List<Obstacle> own) {
    Pen pen = Pen.from(round.get(0));
    for (int i = 0; i < round.size(); i++) {
      Point next = round.get((i + 1) % round.size());
      if (i + 1 < round.size()) {
        pen.to(next);
      }
      own.add(new Obstacle(round.get(i), next, 0.7));
    }
    scene.draw(Layer.BODY, "plate", pen.close());
  }

  /** All bars of a member in one piece: first the rims, then what is between them. */
  private void bars(List<Obstacle> bars, List<Obstacle> own) {
    if (bars.isEmpty()) {
      return;
    }
    Pen pen = Pen.from(bars.get(0).start()).to(bars.get(0).end());
    for (Obstacle bar : bars.subList(1, bars.size())) {
      pen.move(bar.start()).to(bar.end());
    }
    scene.draw(Layer.BODY, "rim", pen);
    scene.draw(Layer.BODY, "core", pen);
    own.addAll(bars);
  }

  private void stub(Point point, List<Obstacle> own) {
    Obstacle nearest =
        own.stream().min(Comparator.comparingDouble(one -> one.distance(point))).orElse(null);
    boolean inside = own.isEmpty() || inside(point, own);
    if (nearest == null || inside || nearest.distance(point) <= OFF) {
      return;
    }
    Vector way = nearest.start().to(nearest.end());
    double along = way.dot(way) > 0 ? nearest.start().to(point).dot(way) / way.dot(way) : 0;
    Point foot = nearest.start().plus(way.times(Math.max(0, Math.min(1, along))));
    scene.draw(Layer.BODY, "stub", Pen.line(foot, point));
  }

  /** Whether a point lies inside the edges of a plate (even number of crossings: outside). */
  private static boolean inside(Point point, List<Obstacle> edges) {
    boolean inside = false;
    for (Obstacle edge : edges) {
      Point a = edge.start();
      Point b = edge.end();
      if (edge.weight() < 1 && a.y() > point.y() != b.y() > point.y()) {
        double x = a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
        inside ^= point.x() < x;
      }
    }
    return inside;
  }

  /** The points round all others, in order (Andrew's chains). */
  static List<Point> hull(List<Point> points) {
    List<Point> sorted =
        points.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
            .toList();
    if (sorted.size() < 3) {
      return sorted;
    }
    List<Point> round = new ArrayList<>(chain(sorted));
    List<Point> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    round.addAll(chain(back));
    return round;
  }

  private static List<Point> chain(List<Point> sorted) {
    List<Point> chain = new ArrayList<>();
    for (Point point : sorted) {
      while (chain.size() > 1
          && chain
                  .get(chain.size() - 2)
                  .to(chain.get(chain.size() - 1))
                  .cross(chain.get(chain.size() - 1).to(point))
              <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    return chain.subList(0, chain.size() - 1);
  }
}
