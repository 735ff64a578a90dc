package bellcrank.examples.file;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes directions and vectors so that they read back exactly. */
final class DirectionText {

  /** Components of slopes that people write, such as 3 to 4. */
  private static final int LARGEST_COMPONENT = 12;

  private static final int DIGITS_OF_ANGLE = 8;
  private static final int DIGITS_OF_SIZE = 12;

  private final AmountText amounts;

  DirectionText(AmountText amounts) {
    this.amounts = amounts;
  }

  /** A direction: a word, an angle, a slope, or the components. */
  String of(Direction direction) {
    return word(direction)
        .or(() -> angle(direction))
        .or(() -> slope(direction))
        .orElseGet(() -> components(direction.x(), direction.y()));
  }

  /** The fields of a force. */
  Flow force(Vector vector) {
    Optional<Direction> direction = direction(vector);
    Optional<Direction> straight = direction.filter(one -> word(one).isPresent());
    if (straight.isPresent()) {
      double size = Math.max(Math.abs(vector.x()), Math.abs(vector.y()));
      return sizeAndDirection(amounts.bare(size, Dimension.FORCE), of(straight.get()));
    }
    return direction
        .flatMap(one -> byAngle(vector, one))
        .orElseGet(
            () ->
                new Flow()
                    .put(
                        "force",
                        Flow.items(
                            List.of(
                                amounts.bare(vector.x(), Dimension.FORCE),
                                amounts.bare(vector.y(), Dimension.FORCE)))));
  }

  private static Flow sizeAndDirection(String size, String direction) {
    return new Flow().put("force", size).put("direction", direction);
  }

  /** Size with angle or slope, if some short pair gives just this vector. */
  private Optional<Flow> byAngle(Vector vector, Direction direction) {
    String size =
        amounts.rounded(StrictMath.hypot(vector.x(), vector.y()), Dimension.FORCE, DIGITS_OF_SIZE);
    Optional<Double> read = amounts.si(size, Dimension.FORCE);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    String angle = angleText(direction);
    Optional<Vector> byAngle =
        amounts
            .si(angle, Dimension.ANGLE)
            .map(radians -> Direction.ofAngle(radians).times(read.get()));
    return byAngle.filter(vector::equals).isPresent()
        ? Optional.of(sizeAndDirection(size, angle))
        : slope(direction, read.get(), vector).map(slope -> sizeAndDirection(size, slope));
  }

  private static Optional<Direction> direction(Vector vector) {
    try {
      return Optional.of(Direction.from(vector));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> word(Direction direction) {
    return Directions.WORDS.entrySet().stream()
        .filter(entry -> entry.getValue().equals(direction))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private Optional<String> angle(Direction direction) {
    String text = angleText(direction);
    return amounts
        .si(text, Dimension.ANGLE)
        .filter(radians -> Direction.ofAngle(radians).equals(direction))
        .map(radians -> text);
  }

  private String angleText(Direction direction) {
    return amounts.rounded(direction.angle(), Dimension.ANGLE, DIGITS_OF_ANGLE)
        + " "
        + amounts.units().unit(Dimension.ANGLE).symbol();
  }

  private static Optional<String> slope(Direction direction) {
    return slope(direction, 1, Vector.of(direction.x(), direction.y()));
  }

  /** Small whole components whose direction times a size is just a vector. */
  private static Optional<String> slope(Direction direction, double size, Vector wanted) {
    for (int longer = 1; longer <= LARGEST_COMPONENT; longer++) {
      double scale = longer / Math.max(Math.abs(direction.x()), Math.abs(direction.y()));
      double x = Math.rint(direction.x() * scale);
      double y = Math.rint(direction.y() * scale);
      // components of just the size would be taken as they are
      boolean scaled = StrictMath.hypot(x, y) != size;
      if (scaled && Direction.from(x, y).times(size).equals(wanted)) {
        return Optional.of(components(x, y));
      }
    }
    return Optional.empty();
  }

  /** Components as they are. */
  static String components(double x, double y) {
    return Flow.items(List.of(AmountText.number(x), AmountText.number(y)));
  }
}
