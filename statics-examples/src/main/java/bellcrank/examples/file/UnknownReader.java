package bellcrank.examples.file;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads the unknown of a search. */
final class UnknownReader {

  static final String EXAMPLE = "what is not known, such as {mass: counterweight}";

  /** What the slope is of. */
  static final String GROUND = "ground";

  /** Where the drive is looked for. */
  static final String TRAVEL = "travel";

  private final Reading reading;

  UnknownReader(Reading reading) {
    this.reading = reading;
  }

  Optional<FindUnknown> read(String name, Spot spot) {
    Optional<Fields> fields = spot.fields(EXAMPLE);
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "unknown", FileKeys.UNKNOWNS));
    if (fields.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = new Draft(reading, name, spot, fields.get());
    Spot main = fields.get().find(kind.get()).orElse(spot);
    return switch (kind.get()) {
      case "move" -> {
        List<String> points = places(draft, main);
        Direction along = draft.direction("along", first(draft, points));
        yield draft.made(() -> new FindUnknown.Move(points, along));
      }
      case "place" -> {
        String point = draft.place(main);
        Direction along = draft.direction("along", draft.placed(point));
        Optional<String> from =
            draft.has("measured from")
                ? Optional.of(draft.place("measured from"))
                : Optional.empty();
        yield draft.made(() -> new FindUnknown.Place(point, along, from));
      }
      case "turn" -> {
        List<String> points = places(draft, main);
        String about = draft.place("about");
        yield draft.made(() -> new FindUnknown.Turn(points, about));
      }
      case "slope" -> word(main, GROUND).flatMap(is -> draft.made(FindUnknown.Slope::new));
      case "drive" -> word(main, TRAVEL).flatMap(is -> draft.made(FindUnknown.Driven::new));
      default -> load(draft, main, kind.get());
    };
  }

  private static Optional<String> word(Spot spot, String word) {
    Optional<String> text = spot.text(word);
    return text.isPresent() && !text.get().equals(word) ? spot.refuse(word) : text;
  }

  private static Optional<Point> first(Draft draft, List<String> points) {
    return points.stream().findFirst().flatMap(draft::placed);
  }

  /** The name of a point, or a list of names. */
  private static List<String> places(Draft draft, Spot spot) {
    if (!spot.isItems()) {
      return List.of(draft.place(spot));
    }
    List<Spot> items = spot.itemsIfAny();
    if (items.isEmpty()) {
      spot.report("the name of a point, or several");
      draft.fail();
    }
    return items.stream().map(draft::place).toList();
  }

  private Optional<FindUnknown> load(Draft draft, Spot spot, String key) {
    FindUnknown.OfLoad.Kind kind =
        Arrays.stream(FindUnknown.OfLoad.Kind.values())
            .filter(one -> one.key().equals(key))
            .findFirst()
            .orElseThrow();
    Optional<String> name = spot.text("the name of a load");
    if (name.isPresent() && !reading.parts().isDeclared(name.get())) {
      return spot.refuse(
          reading.problems().name("load or sought quantity", name.get(), reading.parts().names()));
    }
    return name.flatMap(load -> draft.made(() -> new FindUnknown.OfLoad(kind, load)));
  }
}
