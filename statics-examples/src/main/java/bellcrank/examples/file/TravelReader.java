package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Problem;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code drive}, {@code travel} and {@code curves}. */
final class TravelReader {

  private static final String EXAMPLE = "what drives the device, such as {turn: crank}";

  /** What may be looked for on the way. */
  static final String REST = "rest";

  private final Reading reading;
  private final Map<String, Spot> spots = new HashMap<>();
  private Optional<TravelPlan> plan = Optional.empty();
  private Optional<Spot> curves = Optional.empty();
  private boolean rest;

  TravelReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads all but the curves, whose names need the device. */
  void read(Fields top) {
    curves = top.find("curves");
    if (!top.has("drive") && !top.has("travel") && !top.has("curves")) {
      return;
    }
    Optional<Spot> stated = top.need("drive", EXAMPLE);
    Optional<Drive> drive = stated.flatMap(this::drive);
    Optional<Spot> travel = top.need("travel", "how far, such as {from: -30 deg, to: 60 deg}");
    if (drive.isPresent() && travel.isPresent()) {
      plan = travel.flatMap(spot -> travel(spot, drive.get()));
    }
  }

  /** In what the drive is measured, if there is one. */
  Optional<Dimension> dimension() {
    return plan.map(TravelPlan::dimension);
  }

  private Optional<Drive> drive(Spot spot) {
    Optional<Fields> fields = spot.fields(EXAMPLE);
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "drive", FileKeys.DRIVES));
    if (fields.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = new Draft(reading, TravelCheck.DRIVE, spot, fields.get());
    remember(TravelCheck.DRIVE, spot, fields.get());
    return switch (kind.get()) {
      case "turn" -> {
        String member = draft.body("turn");
        String other = draft.has("against") ? draft.body("against") : Ground.NAME;
        yield draft.made(() -> new Drive.Turn(member, other));
      }
      case "length" -> {
        Optional<String> name =
            fields.get().find("length").flatMap(one -> one.text("the name of a connection"));
        yield name.map(Drive.Length::new);
      }
      default -> {
        String body = draft.body("slide");
        String point = draft.place("point");
        Direction along = draft.direction("along", draft.placed(point));
        yield draft.made(() -> new Drive.Slide(body, point, along));
      }
    };
  }

  /** Keeps where the keys of a part stand, for what only the whole device shows. */
  private void remember(String part, Spot whole, Fields fields) {
    spots.put(part, whole);
    fields.named().forEach(one -> spots.put(part + " " + one.text(), one.value()));
  }

  /** Whether places of rest are looked for on the way. */
  boolean looksForRest() {
    return rest;
  }

  private Optional<TravelPlan> travel(Spot spot, Drive drive) {
    Optional<Fields> fields = spot.fields("how far it goes, such as {from: 0, to: 90 deg}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.TRAVEL);
    Draft draft = new Draft(reading, "travel", spot, fields.get());
    Dimension dimension = drive instanceof Drive.Turn ? Dimension.ANGLE : Dimension.LENGTH;
    double from = draft.amount("from", dimension);
    double to = draft.amount("to", dimension);
    int steps =
        fields
            .get()
            .find("steps")
            .map(one -> draft.orFail(WholeNumber.read(one, 1, TravelPlan.MOST_STEPS), 1))
            .orElse(TravelPlan.USUAL_STEPS);
    rest = draft.has("look for") && draft.choice("look for", Map.of(REST, true), true);
    List<Meeting> meetings = new ArrayList<>();
    for (Spot item : meets(draft)) {
      Optional<Meeting> meeting = meeting(item, meetings.size() + 1);
      draft.orFail(meeting, new Meeting("", "", "", "", ""));
      meeting.ifPresent(meetings::add);
    }
    return draft.made(() -> new TravelPlan(drive, from, to, steps, meetings, List.of()));
  }

  private static List<Spot> meets(Draft draft) {
    Optional<Spot> spot = draft.fields().find("meets");
    if (spot.isEmpty()) {
      return List.of();
    }
    return draft.orFail(
        spot.get()
            .items("a list of meetings, each {point: tip, of: jib, edge: [A, B], against: wall}"),
        List.of());
  }

  private Optional<Meeting> meeting(Spot item, int number) {
    Optional<Fields> fields =
        item.fields("a meeting, such as {point: tip, of: jib, edge: [A, B], against: wall}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.MEETING);
    Draft draft = new Draft(reading, "meeting " + number, item, fields.get());
    remember(TravelCheck.MEETS + number, item, fields.get());
    String point = draft.place("point");
    String body = draft.body("of");
    List<String> edge = draft.twoPlaces("edge");
    String other = draft.body("against");
    return draft.made(() -> new Meeting(body, point, other, edge.get(0), edge.get(1)));
  }

  /** The plan, its curves read and all its names looked up; what is wrong is reported. */
  Optional<TravelPlan> checked(Optional<Device> device, AsksReader asks) {
    List<Ask> asked = curves.map(asks::asks).orElse(List.of());
    if (device.isEmpty() || plan.isEmpty()) {
      return Optional.empty();
    }
    List<Spot> items = curves.map(Spot::itemsIfAny).orElse(List.of());
    if (items.size() != asked.size()) {
      // an ask that could not be read has been reported
      return Optional.empty();
    }
    for (int i = 0; i < items.size(); i++) {
      spots.put(TravelCheck.CURVES + (i + 1), items.get(i));
    }
    TravelPlan whole = plan.get().withCurves(asked);
    TravelCheck.problems(device.get(), whole).forEach(this::report);
    return Optional.of(whole);
  }

  private void report(Problem problem) {
    Spot part = spots.get(problem.part());
    Spot spot = spots.getOrDefault(problem.part() + " " + problem.field(), part);
    if (spot != null) {
      spot.report(problem.value(), problem.wanted());
    }
  }
}
