package bellcrank.examples.file;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code units}. */
final class UnitsReader {

  /** The short forms. */
  static final Map<String, UnitSystem> SYSTEMS = systems();

  private static final String WANTED = "si, us or units such as {length: m, force: kN}";

  private UnitsReader() {}

  private static Map<String, UnitSystem> systems() {
    Map<String, UnitSystem> systems = new LinkedHashMap<>();
    systems.put("si", UnitSystem.SI);
    systems.put("us", UnitSystem.US);
    return systems;
  }

  /** The key under which the unit of a dimension is stated. */
  static String key(Dimension dimension) {
    return dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The stated units; what could not be read stays at its default, with a report. */
  static UnitSystem read(Optional<Spot> stated) {
    if (stated.isEmpty()) {
      return UnitSystem.SI;
    }
    Spot spot = stated.get();
    if (spot.isText()) {
      return spot.text(WANTED)
          .flatMap(word -> Optional.ofNullable(SYSTEMS.get(word)))
          .orElseGet(
              () -> {
                spot.report(WANTED);
                return UnitSystem.SI;
              });
    }
    return spot.fields(WANTED).map(UnitsReader::system).orElse(UnitSystem.SI);
  }

  private static UnitSystem system(Fields fields) {
    fields.only(FileKeys.UNITS);
    Optional<Unit> length = unit(fields, Dimension.LENGTH);
    Optional<Unit> force = unit(fields, Dimension.FORCE);
    UnitSystem system = UnitSystem.SI;
    try {
      system =
          UnitSystem.from(length.orElse(Dimension.LENGTH.si()), force.orElse(Dimension.FORCE.si()));
    } catch (QuantityException e) {
      fields.whole().report("units from which others can be derived (" + e.getMessage() + ")");
    }
    for (Dimension dimension : Dimension.values()) {
      boolean basic = dimension == Dimension.LENGTH || dimension == Dimension.FORCE;
      if (!basic && dimension != Dimension.NUMBER) {
        Optional<Unit> unit = unit(fields, dimension);
        system = unit.isPresent() ? system.with(unit.get()) : system;
      }
    }
    return system;
  }

  private static Optional<Unit> unit(Fields fields, Dimension dimension) {
    Optional<Spot> spot = fields.find(key(dimension));
    Optional<String> text = spot.flatMap(stated -> stated.text("a unit of " + key(dimension)));
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Unit.parse(text.get(), dimension));
    } catch (QuantityException e) {
      return spot.flatMap(
          stated -> stated.refuse("a unit of " + key(dimension) + " (" + e.getMessage() + ")"));
    }
  }
}
