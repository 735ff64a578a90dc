package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts the picture of a force polygon together. */
final class PolygonPicture {

  private static final double SIDE = 300;

  /** How far forces of opposite sense are moved apart where all lie in one line. */
  private static final double APART = 22;

  private final FreeBody body;
  private final Amount amount;
  private final List<ActingForce> forces = new ArrayList<>();

  PolygonPicture(FreeBody body, DrawingOptions options) {
    this.body = body;
    amount = new Amount(options.units());
    for (ActingForce force : body.forces()) {
      forces.addAll(options.components() ? force.components() : List.of(force));
    }
    for (SpreadForce spread : body.spreads()) {
      forces.add(
          new ActingForce(
              spread.part(),
              spread.part(),
              spread.on(),
              spread.origin(),
              spread.middle(),
              spread.total(),
              Optional.empty()));
    }
    forces.removeIf(force -> body.isZero(force.size()));
    forces.sort(Comparator.comparingDouble(force -> Direction.from(force.vector()).angle()));
  }

  private Vector sum() {
    return forces.stream().map(ActingForce::vector).reduce(Vector.ZERO, Vector::plus);
  }

  boolean closes() {
    return body.reactions() && body.openForces().isEmpty() && body.isZero(sum().norm());
  }

  String svg() {
    Scene scene = new Scene();
    Key key = new Key();
    List<String> words = new ArrayList<>();
    words.add("The forces tip to tail.");
    words.addAll(new ForceWords(body, amount).sentences(forces));
    words.add(closes() ? "The polygon closes." : "The polygon does not close.");
    Set<Origin> origins = EnumSet.noneOf(Origin.class);
    forces.forEach(force -> origins.add(force.origin()));
    KeyRows rows = new KeyRows(key, amount);
    rows.origins(origins, false, false);
    if (!forces.isEmpty()) {
      draw(scene, rows);
    }
    String what = body.whole() ? "the whole device" : String.join(", ", body.bodies());
    return new Sheet(scene, body.device().name() + ": force polygon of " + what, words, key).svg();
  }

  private void draw(Scene scene, KeyRows rows) {
    List<Point> corners = corners();
    View view = View.of(corners);
    double scale = Math.min(view.scale(), SIDE / extent(corners));
    view = new View(view.middle(), scale);
    ArrowRule rule = ArrowRule.linear(scale);
    rows.scale(rule, forces.stream().mapToDouble(ActingForce::size).max().orElse(1));
    boolean flat = isFlat();
    for (int i = 0; i < forces.size(); i++) {
      ActingForce force = forces.get(i);
      Vector unit = View.unit(force.vector());
      // in one line the two senses are drawn beside one another
      Vector aside = flat ? unit.perpendicular().times(APART / 2) : Vector.ZERO;
      Point tail = view.at(corners.get(i)).plus(aside);
      Arrow arrow = new Arrow(tail, tail.plus(unit.times(rule.length(force.size()))));
      Element element =
          arrow
              .element("force " + Head.css(force.origin()), Head.of(force.origin()))
              .with("data-force", force.symbol())
              .with("data-on", force.on())
              .with("data-fx", Double.toString(force.vector().x()))
              .with("data-fy", Double.toString(force.vector().y()));
      scene.add(Layer.FORCE, element, arrow.box());
      scene.block(arrow.tail(), arrow.tip(), 3);
      scene.circle(Layer.FORCE, "dot", tail, 2.2);
      List<String> lines = ForceLabels.lines(force.symbol(), amount.force(force.size()));
      scene.label(ForceLabels.along(lines, "force-name", arrow.tail(), arrow.tip()));
    }
    if (!closes()) {
      gap(scene, view.at(corners.get(0)), view.at(corners.get(corners.size() - 1)));
    }
  }

  private void gap(Scene scene, Point first, Point last) {
    if (first.distance(last) > 1) {
      scene.draw(Layer.CONSTRUCTION, "action", Pen.line(first, last));
      scene.block(first, last, 1);
      scene.label(ForceLabels.along(List.of("not closed", "?"), "measure", first, last));
    }
  }

  /** Corners as places whose metres are newtons. */
  private List<Point> corners() {
    List<Point> corners = new ArrayList<>();
    corners.add(Point.ORIGIN);
    for (ActingForce force : forces) {
      corners.add(corners.get(corners.size() - 1).plus(force.vector()));
    }
    return corners;
  }

  private static double extent(List<Point> corners) {
    double extent = 0;
    for (Point a : corners) {
      for (Point b : corners) {
        extent = Math.max(extent, a.distance(b));
      }
    }
    return extent;
  }

  private boolean isFlat() {
    ActingForce first = forces.get(0);
    return forces.stream()
        .allMatch(
            force ->
                Math.abs(first.vector().cross(force.vector()))
                    < 0.02 * first.size() * force.size());
  }
}
