package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Everything that is drawn before it is written: shapes by layers, obstacles, labels. */
final class Scene {

  /** Room that lines take beside their middle. */
  private static final double HALF_LINE = 4;

  private final Map<Layer, List<Element>> layers = new EnumMap<>(Layer.class);
  private final List<Obstacle> obstacles = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private Room bounds = Room.at(Point.ORIGIN);
  private boolean empty = true;

  void add(Layer layer, Element element, Room room) {
    layers.computeIfAbsent(layer, key -> new ArrayList<>()).add(element);
    Room taken = room.grown(HALF_LINE);
    bounds = empty ? taken : bounds.with(taken);
    empty = false;
  }

  void draw(Layer layer, String css, Pen pen) {
    add(layer, pen.element(css), pen.box());
  }

  void circle(Layer layer, String css, Point centre, double radius) {
    Element circle =
        Element.of("circle")
            .with("class", css)
            .with("cx", centre.x())
            .with("cy", centre.y())
            .with("r", radius);
    add(layer, circle, Room.around(centre, radius, radius));
  }

  void block(Point start, Point end, double weight) {
    obstacles.add(new Obstacle(start, end, weight));
  }

  void label(Label label) {
    labels.add(label);
  }

  List<Obstacle> obstacles() {
    return obstacles;
  }

  List<Label> labels() {
    return labels;
  }

  /** The room taken by all but labels. */
  Room bounds() {
    return bounds;
  }

  List<Element> elements() {
    List<Element> all = new ArrayList<>();
    layers.values().forEach(all::addAll);
    return all;
  }

  /** How much of the picture lies on a straight piece, its first few units left out. */
  double crowding(Point start, Point end) {
    int samples = 8;
    double crowd = 0;
    for (int i = 1; i <= samples; i++) {
      double t = (i + 0.5) / (samples + 0.5);
      Point point = start.plus(start.to(end).times(t));
      for (Obstacle obstacle : obstacles) {
        double near = obstacle.distance(point);
        if (near < NEAR) {
          crowd += obstacle.weight() * (1 - near / NEAR);
        }
      }
    }
    return crowd;
  }

  /** Nearer than this, two lines are taken for one. */
  private static final double NEAR = 9;
}
