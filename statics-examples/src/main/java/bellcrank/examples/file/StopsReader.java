package bellcrank.examples.file;

import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the stations of a rope. */
final class StopsReader {

  static final Map<String, Turn> TURNS =
      Map.of("clockwise", Turn.CLOCKWISE, "counter-clockwise", Turn.COUNTER_CLOCKWISE);

  private static final String WANTED =
      "stops such as {end: A, joins: ground} and {sheave: B, joins: jib}";

  private final Reading reading;

  StopsReader(Reading reading) {
    this.reading = reading;
  }

  /** The stops at a key; fewer than stated if one cannot be read, and the draft is given up. */
  List<Stop> stops(Draft rope, String key) {
    Optional<List<Spot>> items =
        rope.fields().need(key, WANTED).flatMap(spot -> spot.items(WANTED));
    List<Stop> stops = new ArrayList<>();
    for (Spot item : rope.orFail(items, List.of())) {
      Optional<Stop> stop = item.fields(WANTED).flatMap(fields -> stop(rope, item, fields));
      stops.add(rope.orFail(stop, Stop.end("", "")));
    }
    return stops;
  }

  private Optional<Stop> stop(Draft rope, Spot item, Fields fields) {
    Optional<String> kind = KindOf.part(fields, "stop", FileKeys.STOPS);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = new Draft(reading, rope.part(), item, fields);
    String at = draft.place(kind.get());
    String body = draft.body("joins");
    return switch (kind.get()) {
      case "end" -> draft.made(() -> Stop.end(body, at));
      case "sheave" -> {
        double radius = draft.amount("radius", Dimension.LENGTH, 0);
        Turn turn =
            draft.has("radius")
                ? draft.choiceNeeded("turns", TURNS, Turn.CLOCKWISE)
                : draft.choice("turns", TURNS, Turn.CLOCKWISE);
        yield draft.made(() -> Stop.sheave(body, at, radius, turn));
      }
      default -> {
        double radius = draft.amount("radius", Dimension.LENGTH);
        Turn turn = draft.choiceNeeded("turns", TURNS, Turn.CLOCKWISE);
        Stop.Kind what = kind.get().equals("drum") ? Stop.Kind.DRUM : Stop.Kind.POST;
        yield draft.made(() -> new Stop(what, body, at, radius, turn));
      }
    };
  }
}
