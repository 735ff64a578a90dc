package bellcrank.statics.drawing;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Body;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Member;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Places at which something is drawn that belongs to a body as a whole. */
record Centres(Places places) {

  /** Middle of the longest bar, else of the outline or the points; of a joint its place. */
  Point of(String name) {
    Device device = places.device();
    Body body = device.body(name).orElse(Ground.GROUND);
    if (body instanceof Joint joint) {
      return places.of(name, joint.at());
    }
    if (!(body instanceof Member member)) {
      return device.middle();
    }
    if (member.bars().isEmpty()) {
      List<String> round = member.outline().isEmpty() ? member.points() : member.outline();
      return middle(round.stream().map(point -> places.of(name, point)).toList());
    }
    Bar longest = member.bars().get(0);
    for (Bar bar : member.bars()) {
      if (length(bar) > length(longest)) {
        longest = bar;
      }
    }
    return middle(List.of(places.of(name, longest.start()), places.of(name, longest.end())));
  }

  private double length(Bar bar) {
    return places.device().point(bar.start()).distance(places.device().point(bar.end()));
  }

  private Point middle(List<Point> points) {
    if (points.isEmpty()) {
      return places.device().middle();
    }
    double x = 0;
    double y = 0;
    for (Point point : points) {
      x += point.x() / points.size();
      y += point.y() / points.size();
    }
    return Point.of(x, y);
  }

  /** Where a connection joins two bodies at one place; else the middle of the first that moves. */
  Point between(String first, String second) {
    List<String> both = new ArrayList<>(List.of(first, second));
    for (Connection connection : places.device().connections()) {
      boolean onePlace = connection.places().stream().distinct().count() == 1;
      if (onePlace && connection.bodies().containsAll(both)) {
        return places.of(first, connection.places().get(0));
      }
    }
    return of(first.equals(Ground.NAME) ? second : first);
  }
}
