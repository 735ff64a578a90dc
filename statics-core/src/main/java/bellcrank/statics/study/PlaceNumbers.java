package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Numbers that say where points are; all parts at a point go with it. */
final class PlaceNumbers {

  private PlaceNumbers() {}

  /** The place of a point, changes taken in; the message of a wrong name tells the nearest. */
  static Point at(Draft draft, String point) {
    if (!draft.device().device().points().containsKey(point)) {
      throw draft.missing("point", point, "a point", draft.device().device().points().keySet());
    }
    return draft.device().point(point);
  }

  /** A coordinate of a point. */
  record Coordinate(boolean upward, String point) implements InputNumber {

    @Override
    public String text() {
      return (upward ? InputText.Y : InputText.X) + " of " + InputText.name(point);
    }

    @Override
    public Dimension dimension() {
      return Dimension.LENGTH;
    }

    @Override
    public double read(Draft draft) {
      Point at = at(draft, point);
      return upward ? at.y() : at.x();
    }

    @Override
    public void write(Draft draft, double value) {
      Point at = at(draft, point);
      draft.device().point(point, upward ? Point.of(at.x(), value) : Point.of(value, at.y()));
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      Vector rate = upward ? Vector.of(0, 1) : Vector.of(1, 0);
      return Optional.of(Rates.ofPoints(Map.of(point, rate)));
    }
  }

  /** The distance of a point from another, which stays; the line between them keeps its slope. */
  record Distance(String point, String from) implements InputNumber {

    @Override
    public String text() {
      return InputText.DISTANCE
          + " of "
          + InputText.name(point)
          + InputText.FROM
          + InputText.name(from);
    }

    @Override
    public Dimension dimension() {
      return Dimension.LENGTH;
    }

    @Override
    public double read(Draft draft) {
      return at(draft, from).distance(at(draft, point));
    }

    @Override
    public void write(Draft draft, double value) {
      Point start = at(draft, from);
      Point end = at(draft, point);
      if (!(value > 0)) {
        throw new ModelException(text(), "distance", value, "a number above 0");
      }
      if (start.equals(end)) {
        throw new ModelException(text(), "distance", "0 as stated", "points at different places");
      }
      draft.device().point(point, start.plus(Direction.from(start, end).times(value)));
    }

    @Override
    public boolean holds(Draft draft, double value) {
      // far from the origin the places are rounded, not the distance
      Point start = at(draft, from);
      double size = value + Math.abs(start.x()) + Math.abs(start.y());
      return Math.abs(read(draft) - value) <= KEPT * size;
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      Direction along = Direction.from(at(draft, from), at(draft, point));
      return Optional.of(Rates.ofPoints(Map.of(point, along.times(1))));
    }
  }

  /** The turn of points about another, from the stated places. */
  record Turn(List<String> points, String about) implements InputNumber {

    @Override
    public String text() {
      String turned =
          points.size() == 1
              ? InputText.name(points.get(0))
              : points.stream().map(InputText::name).collect(Collectors.joining(", ", "[", "]"));
      return InputText.TURN + " of " + turned + InputText.ABOUT + InputText.name(about);
    }

    @Override
    public Dimension dimension() {
      return Dimension.ANGLE;
    }

    @Override
    public double read(Draft draft) {
      at(draft, about);
      points.forEach(point -> at(draft, point));
      return 0;
    }

    @Override
    public void write(Draft draft, double value) {
      Frame frame = Frame.turnAbout(at(draft, about), value);
      points.forEach(point -> draft.device().point(point, frame.apply(at(draft, point))));
    }

    /** It is told from where the points were, so nothing can be read. */
    @Override
    public boolean holds(Draft draft, double value) {
      return true;
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      Map<String, Vector> rates = new HashMap<>();
      for (String point : points) {
        rates.put(point, at(draft, about).to(at(draft, point)).perpendicular());
      }
      return Optional.of(Rates.ofPoints(rates));
    }
  }
}
