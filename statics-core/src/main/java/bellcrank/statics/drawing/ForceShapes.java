package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** Draws what acts on a body: arrows, curved arrows, strips. */
final class ForceShapes {

  /** Length of an arrow whose force is not known. */
  private static final double OPEN = 56;

  private static final double SHAFT = 3;

  private static final double CURVED = 19;

  private final Scene scene;
  private final View view;
  private final ArrowRule rule;
  private final Amount amount;

  ForceShapes(Scene scene, View view, ArrowRule rule, Amount amount) {
    this.scene = scene;
    this.view = view;
    this.rule = rule;
    this.amount = amount;
  }

  /**
   * Draws a force other than zero.
   *
   * @param pulls whether its arrow usually starts at its place
   * @param firm whether that matters much
   */
  Arrow force(ActingForce force, String name, boolean pulls, boolean firm) {
    Point at = view.at(force.at());
    Vector unit = View.unit(force.vector());
    Arrow arrow = new ArrowPlace(scene).find(at, unit, rule.length(force.size()), pulls, firm);
    Element element =
        arrow
            .element("force " + Head.css(force.origin()), Head.of(force.origin()))
            .with("data-force", force.symbol())
            .with("data-on", force.on())
            .with("data-fx", Double.toString(force.vector().x()))
            .with("data-fy", Double.toString(force.vector().y()))
            .with("data-x", Double.toString(force.at().x()))
            .with("data-y", Double.toString(force.at().y()));
    scene.add(Layer.FORCE, element, arrow.box());
    scene.block(arrow.tail(), arrow.tip(), SHAFT);
    if (force.origin() == Origin.WEIGHT) {
      gravityMark(at);
    }
    scene.label(ForceLabels.beside(ForceLabels.lines(name, amount.force(force.size())), arrow, at));
    return arrow;
  }

  /** A circle with two dark quarters: a centre of gravity. */
  private void gravityMark(Point at) {
    scene.circle(Layer.PIN, "sheave", at, 5);
    for (int quarter = 0; quarter < 2; quarter++) {
      double start = Math.PI * (quarter + 0.5);
      Pen pen = Pen.from(at).to(Pen.on(at, 5, start));
      scene.draw(Layer.PIN, "dot", pen.arc(at, 5, start, start + Math.PI / 2).close());
    }
  }

  /** Draws a force that is not known, along its line. */
  void open(OpenForce force, String name) {
    Point at = view.at(force.at());
    Direction along = force.along();
    Vector unit = View.unit(Vector.of(along.x(), along.y()));
    Arrow arrow = new ArrowPlace(scene).find(at, unit, OPEN, false, false);
    Element element =
        arrow
            .element("force open " + Head.css(force.origin()), Head.of(force.origin()))
            .with("data-open", force.symbol())
            .with("data-on", force.on())
            .with("data-x", Double.toString(force.at().x()))
            .with("data-y", Double.toString(force.at().y()));
    scene.add(Layer.FORCE, element, arrow.box());
    scene.block(arrow.tail(), arrow.tip(), SHAFT);
    scene.label(ForceLabels.beside(ForceLabels.lines(name, "?"), arrow, at));
  }

  void couple(ActingCouple couple, String name) {
    Element element =
        curved(view.at(couple.at()), couple.moment() > 0, couple.origin(), "couple ")
            .with("data-couple", couple.part())
            .with("data-on", couple.on())
            .with("data-moment", Double.toString(couple.moment()));
    scene.add(Layer.FORCE, element, Room.around(view.at(couple.at()), CURVED, CURVED).grown(6));
    label(view.at(couple.at()), ForceLabels.lines(name, amount.moment(Math.abs(couple.moment()))));
  }

  void open(OpenCouple couple, String name) {
    Element element =
        curved(view.at(couple.at()), true, couple.origin(), "couple open ")
            .with("data-open", couple.part())
            .with("data-on", couple.on());
    scene.add(Layer.FORCE, element, Room.around(view.at(couple.at()), CURVED, CURVED).grown(6));
    label(view.at(couple.at()), ForceLabels.lines(name, "?"));
  }

  private void label(Point at, List<String> lines) {
    int sides = 12;
    for (int i = 0; i < sides; i++) {
      scene.block(
          Pen.on(at, CURVED, 2 * Math.PI * i / sides),
          Pen.on(at, CURVED, 2 * Math.PI * (i + 1) / sides),
          SHAFT);
    }
    scene.label(ForceLabels.round(lines, "force-name", at, CURVED + 5));
  }

  /** Three quarters of a circle with a head at its end, open at the right below. */
  private static Element curved(Point at, boolean counterClockwise, Origin origin, String css) {
    double low = -Math.PI / 6;
    double start = counterClockwise ? low : low + 1.6 * Math.PI;
    double end = counterClockwise ? low + 1.6 * Math.PI : low;
    // the head is straight: it turns in a little to end on the circle
    double turn = counterClockwise ? Math.PI / 2 - 0.3 : -Math.PI / 2 + 0.3;
    double heading = end + turn;
    Vector unit = Vector.of(Math.cos(heading), -Math.sin(heading));
    double shaftEnd = end - (counterClockwise ? 0.45 : -0.45);
    Pen shaft = Pen.from(Pen.on(at, CURVED, start)).arc(at, CURVED, start, shaftEnd);
    return Element.group(css + Head.css(origin))
        .add(shaft.element("shaft"))
        .add(Head.of(origin).pen(Pen.on(at, CURVED, end), unit, 11).element("head"));
  }
}
