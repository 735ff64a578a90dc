package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/** Labels of arrows and of other shapes, with places that suit them. */
final class ForceLabels {

  private static final double BESIDE = 6;

  private ForceLabels() {}

  /** A label beside an arrow, at best near its free end. */
  static Label beside(List<String> lines, Arrow arrow, Point place) {
    Vector along = arrow.unit();
    boolean tailFree = arrow.tail().distance(place) > arrow.tip().distance(place);
    Point free = tailFree ? arrow.tail() : arrow.tip();
    Vector out = tailFree ? along.times(-1) : along;
    List<Label.Try> tries = new ArrayList<>();
    tries.add(new Label.Try(free, out, BESIDE));
    for (double share : new double[] {0.8, 0.55, 0.3}) {
      Point at = place.plus(place.to(free).times(share));
      tries.add(new Label.Try(at, along.perpendicular(), BESIDE));
      tries.add(new Label.Try(at, along.perpendicular().times(-1), BESIDE));
    }
    return new Label(lines, "force-name", free, tries);
  }

  /** A label round a point. */
  static Label round(List<String> lines, String css, Point at, double gap) {
    List<Label.Try> tries = new ArrayList<>();
    for (int k : new int[] {1, 7, 3, 5, 0, 4, 2, 6}) {
      double angle = Math.PI / 4 * k;
      tries.add(new Label.Try(at, Vector.of(Math.cos(angle), -Math.sin(angle)), gap));
    }
    return new Label(lines, css, at, tries);
  }

  /** A label on a line from one point to another, on either side. */
  static Label along(List<String> lines, String css, Point start, Point end) {
    Point middle = start.plus(start.to(end).times(0.5));
    Vector way = start.to(end);
    Vector unit = way.norm() > 0 ? way.times(1 / way.norm()) : Vector.of(1, 0);
    List<Label.Try> tries = new ArrayList<>();
    for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
      Point at = start.plus(way.times(share));
      tries.add(new Label.Try(at, unit.perpendicular(), BESIDE));
      tries.add(new Label.Try(at, unit.perpendicular().times(-1), BESIDE));
    }
    return new Label(lines, css, middle, tries);
  }

  /** Name and value below one another. */
  static List<String> lines(String name, String value) {
    List<String> lines = new ArrayList<>(TextWidth.lines(name));
    lines.add(value);
    return lines;
  }
}
