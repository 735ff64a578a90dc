package bellcrank.examples.file;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads numbers with units.
 *
 * @param units units of bare numbers
 * @param gravity size of gravity in m/s², for masses that are stated by their weight
 */
record Values(UnitSystem units, double gravity) {

  private static final String PUNCTUATION =
      ": two numbers, a point as decimal sign, one comma between them";

  private static final Pattern WHOLE = Pattern.compile("-?[0-9]+");

  private static final String MASS_OR_FORCE = "a force such as 60 N or a mass such as 12 kg";

  /** A value in SI. */
  Optional<Double> amount(Spot spot, Dimension dimension) {
    Optional<String> text = spot.text(dimension.noun());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Quantity.parse(text.get(), dimension, units).si());
    } catch (QuantityException e) {
      return spot.refuse(dimension.noun() + " (" + e.getMessage() + ")");
    }
  }

  /** A value in SI, a mass stated as such or by its weight. */
  Optional<Double> ofKind(Spot spot, Dimension dimension) {
    return dimension == Dimension.MASS ? mass(spot) : amount(spot, dimension);
  }

  /** The unit in which a value is written that could be read; empty if the spot is no text. */
  Optional<Unit> unit(Spot spot, Dimension dimension) {
    return spot.textIfAny().map(text -> Quantity.unitOf(text, dimension, units));
  }

  /** A mass in kg, stated as such or by its weight. */
  Optional<Double> mass(Spot spot) {
    Optional<String> text = spot.text(MASS_OR_FORCE);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> mass = quiet(text.get(), Dimension.MASS);
    boolean bare = quiet(text.get(), Dimension.NUMBER).isPresent();
    if (mass.isPresent() && !bare) {
      return mass;
    }
    try {
      double force = Quantity.parse(text.get(), Dimension.FORCE, units).si();
      if (gravity == 0) {
        return spot.refuse("a mass: without gravity a weight states none");
      }
      double fromForce = massOf(force);
      return Double.isFinite(fromForce)
          ? Optional.of(fromForce)
          : spot.refuse("a weight that gives a finite mass");
    } catch (QuantityException e) {
      return spot.refuse(MASS_OR_FORCE + " (" + e.getMessage() + ")");
    }
  }

  /** The mass in kg with a given weight in N; gravity is not 0. */
  double massOf(double force) {
    return force / gravity;
  }

  private Optional<Double> quiet(String text, Dimension dimension) {
    try {
      return Optional.of(Quantity.parse(text, dimension, units).si());
    } catch (QuantityException e) {
      return Optional.empty();
    }
  }

  /** Two values of one kind. */
  Optional<List<Double>> pair(Spot spot, Dimension dimension, String wanted) {
    Optional<List<Spot>> items = spot.items(wanted);
    if (items.isEmpty()) {
      return Optional.empty();
    }
    if (items.get().size() != 2) {
      return spot.refuse(isMispunctuated(items.get()) ? wanted + PUNCTUATION : wanted);
    }
    Optional<Double> first = amount(items.get().get(0), dimension);
    Optional<Double> second = amount(items.get().get(1), dimension);
    return first.isPresent() && second.isPresent()
        ? Optional.of(List.of(first.get(), second.get()))
        : Optional.empty();
  }

  /** Whether items look like two numbers with decimal commas, or with no comma between them. */
  private static boolean isMispunctuated(List<Spot> items) {
    List<String> texts = items.stream().flatMap(item -> item.textIfAny().stream()).toList();
    boolean split = texts.size() > 2 && texts.size() < 5 && texts.size() == items.size();
    boolean joined = items.size() == 1 && texts.stream().anyMatch(text -> text.contains(" "));
    return joined || (split && texts.stream().allMatch(WHOLE.asMatchPredicate()));
  }

  /** Coordinates {@code [x, y]}. */
  Optional<Point> coordinates(Spot spot) {
    return pair(spot, Dimension.LENGTH, "coordinates such as [0.5, 2]")
        .map(pair -> Point.of(pair.get(0), pair.get(1)));
  }

  /** Whether a spot reads as a length, without complaint if not. */
  boolean isLength(Spot spot) {
    return spot.textIfAny().flatMap(text -> quiet(text, Dimension.LENGTH)).isPresent();
  }
}
