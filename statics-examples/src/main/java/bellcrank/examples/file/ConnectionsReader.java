package bellcrank.examples.file;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code connections}. */
final class ConnectionsReader {

  static final Map<String, Sides> SIDES = Map.of("two", Sides.TWO, "one", Sides.ONE);

  static final Map<String, Reeving.Hauling> HAULING =
      Map.of(
          "ideal", Reeving.Hauling.IDEAL,
          "raising", Reeving.Hauling.RAISING,
          "lowering", Reeving.Hauling.LOWERING);

  /** Stand in for stops that could not be read. */
  private static final List<Stop> SOUND_STOPS = List.of(Stop.end("a", "A"), Stop.end("b", "B"));

  private final Reading reading;

  ConnectionsReader(Reading reading) {
    this.reading = reading;
  }

  void read(Named named) {
    boolean free = reading.parts().declare(named.text(), named.name());
    Optional<Fields> fields =
        named.value().fields("a connection, such as {pin: A, joins: [lever, ground]}");
    Optional<String> kind =
        fields.flatMap(keys -> KindOf.part(keys, "connection", FileKeys.CONNECTIONS));
    if (fields.isEmpty() || kind.isEmpty()) {
      return;
    }
    reading.index().add(PartIndex.Section.PART, named.text(), named.name(), fields);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    if (!free) {
      draft.fail();
    }
    int count = draft.count();
    connection(kind.get(), draft)
        .ifPresent(
            connection -> {
              reading.device().connect(connection).count(connection.name(), count);
              reading.parts().add(connection);
            });
  }

  private Optional<? extends Connection> connection(String kind, Draft draft) {
    return switch (kind) {
      case "pin" -> pin(draft);
      case "clamp" -> clamp(draft);
      case "roller" -> roller(draft);
      case "slot" -> slot(draft);
      case "guide" -> guide(draft);
      case "strut" -> strut(draft);
      case "line" -> line(draft);
      case "reeving" -> reeving(draft);
      case "wrap" -> wrap(draft);
      case "screw" -> screw(draft);
      case "contact" -> contact(draft);
      default -> contactBase(draft);
    };
  }

  private Optional<Pin> pin(Draft draft) {
    String at = draft.place("pin");
    List<String> joins = draft.joins(true);
    double radius = draft.amount("radius", Dimension.LENGTH, 0);
    double friction = new FrictionReader(reading).read(draft, 0);
    return draft.made(() -> new Pin(draft.part(), at, joins, radius, friction));
  }

  private static Optional<Clamp> clamp(Draft draft) {
    String at = draft.place("clamp");
    List<String> joins = draft.joins(false);
    return draft.made(() -> new Clamp(draft.part(), at, joins.get(0), joins.get(1)));
  }

  private static Optional<Roller> roller(Draft draft) {
    String at = draft.place("roller");
    List<String> joins = draft.joins(false);
    Direction push = draft.direction("push", draft.placed(at));
    Sides sides = draft.choice("sides", SIDES, Sides.TWO);
    return draft.made(() -> new Roller(draft.part(), at, joins.get(0), joins.get(1), push, sides));
  }

  private static Optional<Slot> slot(Draft draft) {
    String at = draft.place("slot");
    List<String> joins = draft.joins(false);
    Direction along = draft.direction("along", draft.placed(at));
    Sides sides = draft.choice("sides", SIDES, Sides.TWO);
    return draft.made(() -> new Slot(draft.part(), at, joins.get(0), joins.get(1), along, sides));
  }

  private static Optional<Guide> guide(Draft draft) {
    String at = draft.place("guide");
    List<String> joins = draft.joins(false);
    Direction along = draft.direction("along", draft.placed(at));
    return draft.made(() -> new Guide(draft.part(), at, joins.get(0), joins.get(1), along));
  }

  private Optional<Strut> strut(Draft draft) {
    List<End> ends = ends(draft, "strut");
    double mass = draft.fields().find("weight").map(draft::mass).orElse(0.0);
    return draft.made(() -> new Strut(draft.part(), ends.get(0), ends.get(1), mass));
  }

  private Optional<Line> line(Draft draft) {
    List<End> ends = ends(draft, "line");
    return draft.made(() -> new Line(draft.part(), ends.get(0), ends.get(1)));
  }

  private Optional<Reeving> reeving(Draft draft) {
    List<Stop> stops = new StopsReader(reading).stops(draft, "reeving");
    double efficiency = draft.amount("efficiency", Dimension.NUMBER, 1);
    Reeving.Hauling hauling = draft.choice("hauling", HAULING, Reeving.Hauling.IDEAL);
    draft.alsoCheck(
        "efficiency", () -> new Reeving(draft.part(), SOUND_STOPS, efficiency, hauling));
    return draft.made(() -> new Reeving(draft.part(), stops, efficiency, hauling));
  }

  private Optional<Wrap> wrap(Draft draft) {
    List<Stop> stops = new StopsReader(reading).stops(draft, "wrap");
    double friction = new FrictionReader(reading).read(draft);
    int extraTurns = draft.wholeNumber("extra turns", 0, 0);
    if (stops.size() != 3) {
      draft
          .fields()
          .find("wrap")
          .filter(Spot::isItems)
          .ifPresent(spot -> spot.report("three stops: an end, a post and an end"));
      draft.fail();
    }
    return draft.made(
        () ->
            new Wrap(draft.part(), stops.get(0), stops.get(1), stops.get(2), friction, extraTurns));
  }

  private Optional<Screw> screw(Draft draft) {
    List<End> ends = ends(draft, "screw");
    double lead = draft.amount("lead", Dimension.LENGTH);
    double radius = draft.amount("mean radius", Dimension.LENGTH);
    double friction = new FrictionReader(reading).read(draft);
    return draft.made(
        () -> new Screw(draft.part(), ends.get(0), ends.get(1), lead, radius, friction));
  }

  private Optional<Contact> contact(Draft draft) {
    String at = draft.place("contact");
    List<String> joins = draft.joins(false);
    Direction push = draft.direction("push", draft.placed(at));
    double friction = new FrictionReader(reading).read(draft);
    double kinetic = draft.amount("kinetic friction", Dimension.NUMBER, friction);
    return draft.made(
        () -> new Contact(draft.part(), at, joins.get(0), joins.get(1), push, friction, kinetic));
  }

  private Optional<ContactBase> contactBase(Draft draft) {
    String at = draft.place("contact base");
    List<String> joins = draft.joins(false);
    Direction push = draft.direction("push", draft.placed(at));
    double width = draft.amount("width", Dimension.LENGTH);
    double friction = new FrictionReader(reading).read(draft);
    double kinetic = draft.amount("kinetic friction", Dimension.NUMBER, friction);
    return draft.made(
        () ->
            new ContactBase(
                draft.part(), at, joins.get(0), joins.get(1), push, width, friction, kinetic));
  }

  /** The two ends; without {@code joins} they are the joints at the two places. */
  private List<End> ends(Draft draft, String kind) {
    List<String> places = draft.twoPlaces(kind);
    List<String> joins = draft.has("joins") ? draft.joins(false) : joints(draft, places);
    return List.of(End.of(joins.get(0), places.get(0)), End.of(joins.get(1), places.get(1)));
  }

  private List<String> joints(Draft draft, List<String> places) {
    List<Optional<String>> joints = places.stream().map(reading.bodies()::jointAt).toList();
    boolean missing = false;
    for (int i = 0; i < 2; i++) {
      missing |= !places.get(i).isEmpty() && joints.get(i).isEmpty();
    }
    if (missing) {
      draft.fields().need("joins", "the two bodies, since not both places are those of joints");
    }
    return joints.stream().map(joint -> draft.orFail(joint, "")).toList();
  }
}
