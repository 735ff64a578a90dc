package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws what is spread along a straight segment as a strip whose height is the intensity, with
 * small arrows that end on the segment.
 */
record StripShapes(Scene scene, View view, Amount amount) {

  /** Height of the strip where the intensity is greatest. */
  static final double HEIGHT = 36;

  /** Distance of the small arrows. */
  private static final double STEP = 17;

  private static final int MOST_ARROWS = 30;

  void draw(SpreadForce load, String name) {
    double greatest = Math.max(load.start().norm(), load.end().norm());
    if (greatest == 0) {
      return;
    }
    Vector total = load.total();
    Element group =
        Element.group("strip " + Head.css(load.origin()))
            .with("data-force", load.part())
            .with("data-on", load.on())
            .with("data-fx", Double.toString(total.x()))
            .with("data-fy", Double.toString(total.y()))
            .with("data-x", Double.toString(load.middle().x()))
            .with("data-y", Double.toString(load.middle().y()))
            .with("data-moment", Double.toString(load.couple()));
    Arrow top = shape(group, load, greatest);
    scene.label(ForceLabels.along(lines(load, name), "force-name", top.tail(), top.tip()));
  }

  /**
   * Draws a pressure that is the reaction of a base, whose force has an arrow of its own.
   *
   * @param load the pressure times the length of the base; its start is the greater end
   * @param greatest the intensity in N/m that is drawn at the full height
   * @param shape how it is spread
   * @param value its greatest value
   */
  void pressure(SpreadForce load, double greatest, String shape, String value) {
    Element group =
        Element.group("strip pressure " + Head.css(load.origin()))
            .with("data-pressure", load.part())
            .with("data-shape", shape)
            .with("data-normal", Double.toString(load.total().norm()))
            .with("data-greatest", Double.toString(load.start().norm()));
    Arrow top = shape(group, load, greatest);
    scene.label(ForceLabels.round(List.of(value), "measure", top.tail(), 6));
  }

  /** Fills a group with the strip; its upper edge, from start to end. */
  private Arrow shape(Element group, SpreadForce load, double greatest) {
    Point from = view.at(load.from());
    Point to = view.at(load.to());
    Vector first = View.seen(load.start()).times(HEIGHT / greatest);
    Vector last = View.seen(load.end()).times(HEIGHT / greatest);
    Point fromTop = from.plus(first.times(-1));
    Point toTop = to.plus(last.times(-1));
    Pen area = Pen.from(from).to(to).to(toTop).to(fromTop).close();
    group.add(area.element("area")).add(Pen.line(fromTop, toTop).element("edge"));
    int arrows = (int) Math.min(MOST_ARROWS, Math.max(3, Math.ceil(from.distance(to) / STEP)));
    for (int i = 0; i <= arrows; i++) {
      double share = (double) i / arrows;
      Point tip = from.plus(from.to(to).times(share));
      Vector way = first.times(1 - share).plus(last.times(share));
      if (way.norm() > 3) {
        Arrow arrow = new Arrow(tip.plus(way.times(-1)), tip);
        group.add(arrow.element("", Head.of(load.origin())));
      }
    }
    scene.add(Layer.STRIP, group, area.box());
    block(from, to, fromTop, toTop);
    return new Arrow(fromTop, toTop);
  }

  private void block(Point from, Point to, Point fromTop, Point toTop) {
    for (int i = 0; i <= 6; i++) {
      double share = i / 6.0;
      scene.block(
          from.plus(from.to(to).times(share)), fromTop.plus(fromTop.to(toTop).times(share)), 2);
    }
    scene.block(fromTop, toTop, 2);
  }

  private List<String> lines(SpreadForce load, String name) {
    List<String> lines = new ArrayList<>(TextWidth.lines(name));
    String start = amount.intensity(load.start().norm());
    String end = amount.intensity(load.end().norm());
    lines.add(start.equals(end) ? start : start + " to " + end);
    return lines;
  }
}
