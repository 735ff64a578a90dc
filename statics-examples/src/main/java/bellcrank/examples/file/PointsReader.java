package bellcrank.examples.file;

import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code points}; one may be placed from others that stand later. */
final class PointsReader {

  private static final Set<String> POLAR = ordered("from", "distance", "angle");
  private static final Set<String> ON_A_LINE = ordered("from", "toward", "distance", "fraction");
  private static final Set<String> OFFSET = ordered("from", "right", "up");

  private final Values values;
  private final PointNames points;
  private final Map<String, Named> waiting = new LinkedHashMap<>();
  private final Map<String, Set<String>> needs = new HashMap<>();
  private final Map<String, List<String>> neededBy = new HashMap<>();

  private PointsReader(Values values, PointNames points) {
    this.values = values;
    this.points = points;
  }

  /** Puts the points that can be read into the device, in the order of the file. */
  static void read(
      List<Named> stated, Values values, PointNames points, DeviceBuilder device, PartIndex index) {
    stated.forEach(named -> points.declare(named.text()));
    new PointsReader(values, points).place(stated);
    for (Named named : stated) {
      index.add(PartIndex.Section.POINT, named.text(), named.name(), Optional.empty());
      Optional<Point> place = points.find(named.text());
      if (place.isPresent()) {
        try {
          device.point(named.text(), place.get());
        } catch (ModelException e) {
          points.declare(named.text());
          e.problems().forEach(one -> named.name().report(one.value(), one.wanted()));
        }
      }
    }
  }

  /** Places each point as soon as those are placed from which it is measured. */
  private void place(List<Named> stated) {
    Deque<Named> ready = new ArrayDeque<>();
    for (Named named : stated) {
      Set<String> from = origins(named.value());
      if (from.isEmpty()) {
        ready.add(named);
      } else {
        waiting.put(named.text(), named);
        needs.put(named.text(), from);
        from.forEach(
            one -> neededBy.computeIfAbsent(one, o -> new ArrayList<>()).add(named.text()));
      }
    }
    while (!ready.isEmpty()) {
      Named named = ready.remove();
      point(named.value()).ifPresent(point -> points.place(named.text(), point));
      for (String next : neededBy.getOrDefault(named.text(), List.of())) {
        Set<String> open = needs.getOrDefault(next, Set.of());
        if (open.remove(named.text()) && open.isEmpty()) {
          Optional.ofNullable(waiting.remove(next)).ifPresent(ready::add);
        }
      }
    }
    waiting.values().stream().filter(this::leadsBack).forEach(PointsReader::refuseCircle);
  }

  private static void refuseCircle(Named named) {
    named
        .value()
        .report(
            "a place that leads back to " + Excerpt.quoted(named.text()),
            "points placed one" + " after the other, not in a circle");
  }

  /** Whether a point that could not be placed is measured from itself, by way of others. */
  private boolean leadsBack(Named named) {
    Set<String> seen = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(needs.getOrDefault(named.text(), Set.of()));
    while (!open.isEmpty()) {
      String next = open.remove();
      if (next.equals(named.text())) {
        return true;
      }
      if (seen.add(next)) {
        open.addAll(needs.getOrDefault(next, Set.of()));
      }
    }
    return false;
  }

  private Set<String> origins(Spot spot) {
    Set<String> origins = new LinkedHashSet<>();
    if (spot.isFields()) {
      spot.fields("")
          .ifPresent(
              fields -> {
                for (String key : List.of("from", "toward")) {
                  fields
                      .find(key)
                      .flatMap(Spot::textIfAny)
                      .filter(points::isKnown)
                      .ifPresent(origins::add);
                }
              });
    }
    return origins;
  }

  private Optional<Point> point(Spot spot) {
    if (spot.isItems()) {
      return values.coordinates(spot);
    }
    Optional<Fields> fields =
        spot.fields("coordinates such as [0.5, 2], or {from: A, distance: 3 m, angle: 65 deg}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    try {
      return placed(fields.get());
    } catch (IllegalArgumentException e) {
      return spot.refuse("a place at a finite distance");
    }
  }

  private Optional<Point> placed(Fields fields) {
    if (fields.has("toward")) {
      return onALine(fields);
    }
    if (fields.has("right") || fields.has("up")) {
      fields.only(OFFSET, FileKeys.PLACED);
      Optional<Point> from = from(fields);
      Optional<Double> right = lengthIfAny(fields, "right");
      Optional<Double> up = lengthIfAny(fields, "up");
      return from.isPresent() && right.isPresent() && up.isPresent()
          ? Optional.of(from.get().plus(Vector.of(right.get(), up.get())))
          : Optional.empty();
    }
    fields.only(POLAR, FileKeys.PLACED);
    Optional<Point> from = from(fields);
    Optional<Double> distance = amount(fields, "distance", Dimension.LENGTH);
    Optional<Double> angle = amount(fields, "angle", Dimension.ANGLE);
    return from.isPresent() && distance.isPresent() && angle.isPresent()
        ? Optional.of(from.get().plus(Direction.ofAngle(angle.get()).times(distance.get())))
        : Optional.empty();
  }

  private Optional<Point> onALine(Fields fields) {
    fields.only(ON_A_LINE, FileKeys.PLACED);
    Optional<Point> from = from(fields);
    Optional<Point> toward = end(fields, "toward");
    boolean byFraction = fields.has("fraction");
    Optional<Double> part =
        byFraction
            ? amount(fields, "fraction", Dimension.NUMBER)
            : amount(fields, "distance", Dimension.LENGTH);
    if (byFraction && fields.has("distance")) {
      return fields.whole().refuse("fraction and distance", "one of them");
    }
    if (from.isEmpty() || toward.isEmpty() || part.isEmpty()) {
      return Optional.empty();
    }
    Vector way = from.get().to(toward.get());
    if (byFraction) {
      return Optional.of(from.get().plus(way.times(part.get())));
    }
    if (way.equals(Vector.ZERO)) {
      return fields.whole().refuse("two points at the same place", "two points apart");
    }
    return Optional.of(from.get().plus(Direction.from(way).times(part.get())));
  }

  private Optional<Point> from(Fields fields) {
    return end(fields, "from");
  }

  private Optional<Point> end(Fields fields, String key) {
    return fields
        .need(key, "the point from which it is measured")
        .flatMap(spot -> points.point(spot, values));
  }

  private Optional<Double> amount(Fields fields, String key, Dimension dimension) {
    return fields.need(key, dimension.noun()).flatMap(spot -> values.amount(spot, dimension));
  }

  private Optional<Double> lengthIfAny(Fields fields, String key) {
    return fields.has(key) ? amount(fields, key, Dimension.LENGTH) : Optional.of(0.0);
  }

  private static Set<String> ordered(String... keys) {
    return new LinkedHashSet<>(List.of(keys));
  }
}
