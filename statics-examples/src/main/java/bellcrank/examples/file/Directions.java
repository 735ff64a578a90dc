package bellcrank.examples.file;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads directions. */
final class Directions {

  static final Map<String, Direction> WORDS =
      Map.of(
          "up", Direction.UP,
          "down", Direction.DOWN,
          "left", Direction.LEFT,
          "right", Direction.RIGHT);

  private static final String WANTED =
      "up, down, left, right, an angle such as 130 deg, components such as [3, -4] or"
          + " {toward: point}";

  private final Values values;
  private final PointNames points;

  Directions(Values values, PointNames points) {
    this.values = values;
    this.points = points;
  }

  /** The direction at a spot; {@code own} is where the thing that has it stands. */
  Optional<Direction> direction(Spot spot, Optional<Point> own) {
    if (spot.isItems()) {
      return components(spot).flatMap(pair -> fromComponents(spot, pair.get(0), pair.get(1)));
    }
    if (spot.isFields()) {
      return toward(spot, own);
    }
    Optional<String> text = spot.text(WANTED);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Direction word = WORDS.get(text.get());
    if (word != null) {
      return Optional.of(word);
    }
    if (text.get().codePoints().noneMatch(Character::isDigit)) {
      Optional<String> near = spot.problems().near(text.get(), WORDS.keySet());
      return spot.refuse(
          near.map(one -> WANTED + "; the nearest is " + Excerpt.quoted(one)).orElse(WANTED));
    }
    return values.amount(spot, Dimension.ANGLE).map(Direction::ofAngle);
  }

  /**
   * The vector of a size in the direction at a spot. Components that have just this size are taken
   * as they are, so that every vector can be written exactly.
   */
  Optional<Vector> vector(double size, Spot spot, Optional<Point> own) {
    if (spot.isItems()) {
      Optional<List<Double>> pair = components(spot);
      if (pair.isEmpty()) {
        return Optional.empty();
      }
      double x = pair.get().get(0);
      double y = pair.get().get(1);
      if (StrictMath.hypot(x, y) == size) {
        return Optional.of(Vector.of(x, y));
      }
      return fromComponents(spot, x, y).map(direction -> direction.times(size));
    }
    return direction(spot, own).map(direction -> direction.times(size));
  }

  private Optional<List<Double>> components(Spot spot) {
    return values.pair(spot, Dimension.NUMBER, "components such as [3, -4]");
  }

  private static Optional<Direction> fromComponents(Spot spot, double x, double y) {
    if (isUnit(x, y)) {
      return Optional.of(new Direction(x, y));
    }
    try {
      return Optional.of(Direction.from(x, y));
    } catch (IllegalArgumentException e) {
      return spot.refuse("components that are not both 0 and not too large");
    }
  }

  /** Whether components are those of a unit vector already, within rounding. */
  static boolean isUnit(double x, double y) {
    try {
      new Direction(x, y);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private Optional<Direction> toward(Spot spot, Optional<Point> own) {
    Optional<Fields> fields = spot.fields(WANTED);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.DIRECTION);
    Optional<Point> end =
        fields
            .get()
            .need("toward", "the point toward which it goes")
            .flatMap(to -> points.point(to, values));
    Optional<Spot> from = fields.get().find("from");
    Optional<Point> start = from.isPresent() ? points.point(from.get(), values) : own;
    if (from.isEmpty() && own.isEmpty()) {
      return spot.refuse("no key from", "from and toward: there is no place of its own here");
    }
    if (start.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    if (start.get().equals(end.get())) {
      return spot.refuse("two points at the same place", "two points apart");
    }
    return fromComponents(spot, end.get().x() - start.get().x(), end.get().y() - start.get().y());
  }
}
