package bellcrank.examples.file;

import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Point;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The points of the file: stated ones, and those made of coordinates that stand in their place. */
final class PointNames {

  private final Map<String, Optional<Point>> places = new LinkedHashMap<>();
  private boolean whole = true;

  /** Says that points are missing that could not be read; unknown names are no fault then. */
  void incomplete() {
    whole = false;
  }

  /** A name that stands in the file; its place comes later. */
  void declare(String name) {
    places.put(name, Optional.empty());
  }

  void place(String name, Point point) {
    places.put(name, Optional.of(point));
  }

  Set<String> names() {
    return places.keySet();
  }

  boolean isKnown(String name) {
    return places.containsKey(name);
  }

  /** The place of a point; empty if it could not be read. */
  Optional<Point> find(String name) {
    return places.getOrDefault(name, Optional.empty());
  }

  /** The named point at a spot; empty if there is none, which is reported, or it has no place. */
  Optional<String> named(Spot spot) {
    Optional<String> name = spot.text("the name of a point, or coordinates such as [0.5, 2]");
    if (whole && name.isPresent() && !isKnown(name.get())) {
      return spot.refuse(spot.problems().name("point", name.get(), names()));
    }
    return name.filter(known -> find(known).isPresent());
  }

  /** The place at a spot, by name or by coordinates, without a name made for it. */
  Optional<Point> point(Spot spot, Values values) {
    return spot.isItems() ? values.coordinates(spot) : named(spot).flatMap(this::find);
  }

  /** The name of the place at a spot; coordinates make a point that is called as they stand. */
  Optional<String> place(Spot spot, Values values, DeviceBuilder device) {
    return place(spot, asWritten(spot), values, device);
  }

  /** The name of the place at a spot; coordinates make a point of a given name. */
  Optional<String> place(Spot spot, String base, Values values, DeviceBuilder device) {
    if (!spot.isItems()) {
      return named(spot);
    }
    Optional<Point> point = values.coordinates(spot);
    if (point.isEmpty()) {
      return Optional.empty();
    }
    String name = base;
    for (int number = 2; isKnown(name); number++) {
      if (find(name).equals(point)) {
        return Optional.of(name);
      }
      name = base + " " + number;
    }
    try {
      device.point(name, point.get());
    } catch (ModelException e) {
      return spot.refuse(
          "the name of a point: " + Excerpt.quoted(name) + " cannot be made the name of one");
    }
    place(name, point.get());
    return Optional.of(name);
  }

  /** Coordinates such as {@code [0.5, 2]}; a name has no double quote, so inches are spelt. */
  private static String asWritten(Spot spot) {
    return spot.itemsIfAny().stream()
        .map(item -> item.textIfAny().orElse("").replace("\"", " in"))
        .collect(Collectors.joining(", ", "[", "]"));
  }
}
