package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * A part being read. Each question answers something even if the file does not, so that all errors
 * of the part are found in one go; the part is then not made.
 */
final class Draft {

  /** Stands in for the place of a point that could not be read. */
  private static final Point ELSEWHERE = Point.of(1e300, 1e300);

  /** A bare number in SI units, in place of which what was written is told. */
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.]+(?:E[-+]?[0-9]+)?");

  private final Reading reading;
  private final String part;
  private final Spot name;
  private final Fields fields;
  private boolean sound = true;

  Draft(Reading reading, String part, Spot name, Fields fields) {
    this.reading = reading;
    this.part = part;
    this.name = name;
    this.fields = fields;
  }

  Fields fields() {
    return fields;
  }

  String part() {
    return part;
  }

  /** Where its name stands. */
  Spot name() {
    return name;
  }

  boolean has(String key) {
    return fields.has(key);
  }

  /** Says that the part cannot be made. */
  void fail() {
    sound = false;
  }

  /** Whether nothing has failed so far. */
  boolean isSound() {
    return sound;
  }

  /** What was read, or something in its place with the part given up. */
  <T> T orFail(Optional<T> read, T otherwise) {
    if (read.isEmpty()) {
      sound = false;
    }
    return read.orElse(otherwise);
  }

  private Optional<Spot> spot(String key, String wanted) {
    Optional<Spot> spot = fields.need(key, wanted);
    if (spot.isEmpty()) {
      sound = false;
    }
    return spot;
  }

  /** Name of the point at a key. */
  String place(String key) {
    return spot(key, "the name of a point, or coordinates such as [0.5, 2]")
        .map(this::place)
        .orElse("");
  }

  /** Name of the point at a spot. */
  String place(Spot spot) {
    return orFail(reading.points().place(spot, reading.values(), reading.device()), "");
  }

  /** Name of the point at a spot; one made of coordinates is called by the part and by a word. */
  String place(Spot spot, String word) {
    return orFail(
        reading.points().place(spot, part + " " + word, reading.values(), reading.device()), "");
  }

  /** Names of the two points at a key. */
  List<String> twoPlaces(String key) {
    String wanted = "two places, such as [A, B]";
    Optional<List<Spot>> items = spot(key, wanted).flatMap(spot -> spot.items(wanted));
    if (items.isEmpty()) {
      sound = false;
      return List.of("", "");
    }
    if (items.get().size() != 2) {
      fields.find(key).ifPresent(spot -> spot.report(wanted));
      sound = false;
      return List.of("", "");
    }
    return items.get().stream().map(this::place).toList();
  }

  /** Where a point is that was read before. */
  Optional<Point> placed(String point) {
    return Optional.of(reading.points().find(point).orElse(ELSEWHERE));
  }

  /** Name of the body at a key. */
  String body(String key) {
    return spot(key, "the name of a body").map(this::body).orElse("");
  }

  private String body(Spot spot) {
    return orFail(reading.bodies().body(spot), "");
  }

  /** Names of bodies at {@code joins}: just two, or two and more. */
  List<String> joins(boolean orMore) {
    String wanted =
        orMore
            ? "the names of two bodies or more, such as [lever, ground]"
            : "the names of two" + " bodies, such as [lever, ground]";
    Optional<List<Spot>> items = spot("joins", wanted).flatMap(spot -> spot.items(wanted));
    if (items.isEmpty()) {
      sound = false;
      return Collections.nCopies(2, "");
    }
    if (items.get().size() < 2 || (!orMore && items.get().size() > 2)) {
      fields.find("joins").ifPresent(spot -> spot.report(wanted));
      sound = false;
      return Collections.nCopies(2, "");
    }
    List<String> bodies = new ArrayList<>();
    items.get().forEach(spot -> bodies.add(body(spot)));
    return bodies;
  }

  /** A text that must be there. */
  String text(String key, String wanted) {
    return spot(key, wanted).map(spot -> orFail(spot.text(wanted), "")).orElse("");
  }

  /** A text that may be left out. */
  Optional<String> textIfAny(String key) {
    Optional<Spot> spot = fields.find(key);
    return spot.isPresent() ? Optional.of(orFail(spot.get().text("a text"), "")) : Optional.empty();
  }

  /** A value that may be left out, in SI, if it is there. */
  Optional<Double> amountIfAny(String key, Dimension dimension) {
    return fields.find(key).map(spot -> amount(spot, dimension));
  }

  /** A value that must be there, in SI. */
  double amount(String key, Dimension dimension) {
    return spot(key, dimension.noun()).map(spot -> amount(spot, dimension)).orElse(1.0);
  }

  /** A value that may be left out, in SI. */
  double amount(String key, Dimension dimension, double otherwise) {
    return fields.find(key).map(spot -> amount(spot, dimension)).orElse(otherwise);
  }

  /** A value in SI. */
  double amount(Spot spot, Dimension dimension) {
    return orFail(reading.values().amount(spot, dimension), 1.0);
  }

  /** A mass in kg. */
  double mass(Spot spot) {
    return orFail(reading.values().mass(spot), 1.0);
  }

  /** A direction that must be there. */
  Direction direction(String key, Optional<Point> own) {
    return spot(key, "a direction such as up, 130 deg or [3, -4]")
        .map(spot -> direction(spot, own))
        .orElse(Direction.UP);
  }

  /** A direction. */
  Direction direction(Spot spot, Optional<Point> own) {
    return orFail(reading.directions().direction(spot, own), Direction.UP);
  }

  /** One of some words, which may be left out. */
  <E> E choice(String key, Map<String, E> words, E otherwise) {
    return fields.find(key).map(spot -> orFail(word(spot, words), otherwise)).orElse(otherwise);
  }

  /** One of some words, which must be there. */
  <E> E choiceNeeded(String key, Map<String, E> words, E placeholder) {
    return spot(key, oneOf(words))
        .map(spot -> orFail(word(spot, words), placeholder))
        .orElse(placeholder);
  }

  /** The words with an or, always in the same order. */
  private static String oneOf(Map<String, ?> words) {
    List<String> sorted = words.keySet().stream().sorted().toList();
    int last = sorted.size() - 1;
    return last == 0
        ? sorted.get(0)
        : String.join(", ", sorted.subList(0, last)) + " or " + sorted.get(last);
  }

  private static <E> Optional<E> word(Spot spot, Map<String, E> words) {
    String wanted = oneOf(words);
    Optional<String> text = spot.text(wanted);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    E found = words.get(text.get());
    if (found != null) {
      return Optional.of(found);
    }
    return spot.refuse(
        spot.problems()
            .near(text.get(), words.keySet())
            .map(near -> wanted + "; the nearest is " + Excerpt.quoted(near))
            .orElse(wanted));
  }

  /** A whole number of 1 or more that may be left out. */
  int count() {
    return wholeNumber("count", 1, 1);
  }

  /** A whole number that may be left out. */
  int wholeNumber(String key, int least, int otherwise) {
    return fields
        .find(key)
        .map(spot -> orFail(WholeNumber.read(spot, least), otherwise))
        .orElse(otherwise);
  }

  /** The part, unless something of it could not be read; its own complaints are reported. */
  <T> Optional<T> made(Supplier<T> maker) {
    if (!sound) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (ModelException e) {
      e.problems().forEach(this::report);
      return Optional.empty();
    }
  }

  /**
   * Reports what is wrong with one field of a part that cannot be made for another reason.
   *
   * @param maker makes the part with something sound in place of what could not be read
   */
  void alsoCheck(String field, Runnable maker) {
    if (sound) {
      return;
    }
    try {
      maker.run();
    } catch (ModelException e) {
      e.problems().stream().filter(one -> one.field().equals(field)).forEach(this::report);
    }
  }

  private void report(Problem problem) {
    if (problem.field().equals("name")) {
      name.report(problem.value(), problem.wanted());
    } else {
      Optional<Spot> spot = fields.find(problem.field());
      String found =
          spot.flatMap(Spot::textIfAny)
              .filter(text -> NUMBER.matcher(problem.value()).matches())
              .map(text -> problem.field() + " " + Excerpt.cut(text))
              .orElseGet(() -> PartIndex.found(problem));
      spot.orElse(name).report(found, problem.wanted());
    }
  }
}
