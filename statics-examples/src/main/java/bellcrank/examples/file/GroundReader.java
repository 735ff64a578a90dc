package bellcrank.examples.file;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.SoilTable;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads {@code ground}: what is under the contact bases. */
final class GroundReader {

  /** Source of a pressure for which the file names none. */
  static final String STATED = "stated in the device file";

  private final Reading reading;
  private final List<Foundation> foundations = new ArrayList<>();

  GroundReader(Reading reading) {
    this.reading = reading;
  }

  /** What could be read, in order. */
  List<Foundation> foundations() {
    return List.copyOf(foundations);
  }

  void read(Named named) {
    Optional<Fields> fields =
        named
            .value()
            .fields("the ground under a contact base, such as {length: 300 mm, pressure: 100 kPa}");
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.GROUND);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    base(draft, named);
    double length = draft.amount("length", Dimension.LENGTH);
    Optional<Bearing> bearing = bearing(draft);
    double adhesion = draft.amount("adhesion", Dimension.PRESSURE, 0);
    Optional<Cleat> cleat = part(draft, "cleat", FileKeys.CLEAT, GroundReader::cleat);
    draft
        .made(() -> new Foundation(named.text(), length, bearing, adhesion, cleat))
        .ifPresent(foundations::add);
  }

  /** Checks that the ground is under a contact base. */
  private void base(Draft draft, Named named) {
    PartNames parts = reading.parts();
    String name = named.text();
    if (parts.connection(name).filter(ContactBase.class::isInstance).isPresent()) {
      return;
    }
    draft.fail();
    boolean failed =
        parts.isDeclared(name) && parts.connection(name).isEmpty() && parts.load(name).isEmpty();
    if (!failed) {
      named.name().report(reading.problems().name("contact base", name, parts.contactBases()));
    }
  }

  private Optional<Bearing> bearing(Draft draft) {
    List<String> rules = draft.fields().present(FileKeys.BEARINGS);
    if (rules.size() > 1) {
      draft.fail();
      return draft
          .fields()
          .whole()
          .refuse(
              String.join(" and ", rules),
              "one of pressure, soil, drained and undrained, or none for ground that does not"
                  + " give");
    }
    Optional<Spot> source = draft.fields().find("source");
    if (source.isPresent() && !draft.has("pressure")) {
      draft.fail();
      source.get().report("the key source", "a source only for a pressure");
    }
    return switch (rules.isEmpty() ? "" : rules.get(0)) {
      case "pressure" -> pressure(draft, source);
      case "soil" -> draft.fields().find("soil").flatMap(spot -> soil(draft, spot));
      case "drained" -> part(draft, "drained", FileKeys.DRAINED, GroundReader::drained);
      case "undrained" -> part(draft, "undrained", FileKeys.UNDRAINED, GroundReader::undrained);
      default -> Optional.empty();
    };
  }

  private static Optional<Bearing> pressure(Draft draft, Optional<Spot> source) {
    double pressure = draft.amount("pressure", Dimension.PRESSURE);
    String words =
        source
            .map(spot -> draft.orFail(spot.text("where the pressure comes from"), STATED))
            .orElse(STATED);
    return orFail(draft, draft.made(() -> new Presumptive(pressure, words.strip())));
  }

  private static Optional<Bearing> soil(Draft draft, Spot spot) {
    Optional<String> name = spot.text("the name of a row of the soil table");
    try {
      Optional<Bearing> bearing = name.map(row -> SoilTable.named(row).presumptive());
      return orFail(draft, bearing);
    } catch (ModelException e) {
      e.problems().forEach(one -> spot.report(PartIndex.found(one), one.wanted()));
      draft.fail();
      return Optional.empty();
    }
  }

  private <T> Optional<T> part(
      Draft draft, String key, Set<String> keys, Function<Draft, Optional<T>> maker) {
    Optional<Spot> spot = draft.fields().find(key);
    if (spot.isEmpty()) {
      return Optional.empty();
    }
    Optional<Fields> fields = spot.get().fields("values by name: " + String.join(", ", keys));
    fields.ifPresent(found -> found.only(keys));
    Optional<T> made =
        fields.flatMap(found -> maker.apply(new Draft(reading, key, spot.get(), found)));
    return orFail(draft, made);
  }

  private static <T> Optional<T> orFail(Draft draft, Optional<T> made) {
    if (made.isEmpty()) {
      draft.fail();
    }
    return made;
  }

  private static Optional<Bearing> drained(Draft draft) {
    double angle = draft.amount("friction angle", Dimension.ANGLE);
    double cohesion = draft.amount("cohesion", Dimension.PRESSURE, 0);
    double weight = draft.amount("weight", Dimension.FORCE_PER_VOLUME);
    double overburden = draft.amount("overburden", Dimension.PRESSURE, 0);
    return draft.made(() -> new Drained(angle, cohesion, weight, overburden));
  }

  private static Optional<Bearing> undrained(Draft draft) {
    double strength = draft.amount("strength", Dimension.PRESSURE);
    double overburden = draft.amount("overburden", Dimension.PRESSURE, 0);
    return draft.made(() -> new Undrained(strength, overburden));
  }

  private static Optional<Cleat> cleat(Draft draft) {
    double depth = draft.amount("depth", Dimension.LENGTH);
    double angle = draft.amount("friction angle", Dimension.ANGLE);
    double cohesion = draft.amount("cohesion", Dimension.PRESSURE, 0);
    double weight = draft.amount("weight", Dimension.FORCE_PER_VOLUME);
    return draft.made(() -> new Cleat(depth, angle, cohesion, weight));
  }
}
