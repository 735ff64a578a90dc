package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.BasePressure;
import java.util.List;
import java.util.Locale;

/**
 * Draws pressures under bases: strips on one scale, and a wedge under an edge that carries the
 * whole force.
 */
record PressureShapes(Scene scene, View view, Amount amount) {

  /** Height of the wedge under an edge, and half of its width. */
  private static final double WEDGE = 15;

  private static final double HALF_WEDGE = 6;

  /** Draws them, with a row of the key for each way in which they are spread. */
  void draw(List<BaseStrip> strips, Key key) {
    double greatest = strips.stream().mapToDouble(BaseStrip::greatest).max().orElse(0);
    for (BaseStrip one : strips) {
      if (one.strip().isPresent()) {
        new StripShapes(scene, view, amount)
            .pressure(
                one.strip().get(), greatest, shape(one.pressure()), "up to " + one.value(amount));
      } else {
        edge(one);
      }
    }
    if (greatest > 0) {
      key.measure(
          "data-units-per-newton-per-metre", Double.toString(StripShapes.HEIGHT / greatest));
      key.note(List.of("under a base: its pressure, which adds up to the normal force"));
    }
    if (strips.stream().anyMatch(one -> one.strip().isEmpty())) {
      key.note(List.of("wedge under a base: the whole force is on this edge"));
    }
  }

  private static String shape(BasePressure pressure) {
    return pressure.shape().name().toLowerCase(Locale.ROOT);
  }

  private void edge(BaseStrip one) {
    Point at = view.at(one.edge());
    Vector back = View.seen(one.push()).times(-WEDGE);
    Vector side = View.seen(one.push()).perpendicular().times(HALF_WEDGE);
    Point bottom = at.plus(back);
    Pen wedge = Pen.from(at).to(bottom.plus(side)).to(bottom.plus(side.times(-1))).close();
    Element group =
        Element.group("pressure connection")
            .with("data-pressure", one.base().name())
            .with("data-shape", "edge")
            .with("data-normal", Double.toString(one.pressure().normal()))
            .with("data-x", Double.toString(one.edge().x()))
            .with("data-y", Double.toString(one.edge().y()))
            .add(wedge.element("wedge"));
    scene.add(Layer.STRIP, group, wedge.box());
    scene.block(at, bottom, 2);
    scene.label(ForceLabels.round(List.of("on the edge"), "measure", bottom, 6));
  }
}
