package bellcrank.statics.study;

import bellcrank.statics.geometry.Direction;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A number that parts of one kind have: how it is read from a part, and the part with another.
 *
 * @param <T> the kind of the part
 */
record Slot<T>(Class<T> kind, Function<T, Optional<Double>> get, BiFunction<T, Double, T> with) {

  static <T> Slot<T> of(Class<T> kind, Function<T, Double> get, BiFunction<T, Double, T> with) {
    return new Slot<>(kind, part -> Optional.of(get.apply(part)), with);
  }

  /** A direction, as an angle. */
  static <T> Slot<T> way(
      Class<T> kind, Function<T, Direction> get, BiFunction<T, Direction, T> with) {
    return of(
        kind,
        part -> get.apply(part).angle(),
        (part, angle) -> with.apply(part, Direction.ofAngle(angle)));
  }

  Optional<Double> read(Draft draft, String name) {
    return draft.part(kind, name).flatMap(get);
  }

  /** Whether there was such a number to change. */
  boolean write(Draft draft, String name, double value) {
    Optional<T> part = draft.part(kind, name);
    if (part.isEmpty() || get.apply(part.get()).isEmpty()) {
      return false;
    }
    draft.put(with.apply(part.get(), value));
    return true;
  }

  List<String> names(Draft draft) {
    return draft.parts(kind).stream()
        .filter(part -> get.apply(part).isPresent())
        .map(Draft::nameOf)
        .toList();
  }
}
