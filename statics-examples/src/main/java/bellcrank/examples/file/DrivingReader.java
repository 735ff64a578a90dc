package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Variation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code driving}: the loads that grow until something gives. */
final class DrivingReader {

  private static final String EXAMPLE =
      "the loads that grow, such as {loads: barrel, tell: [hand]}";
  private static final String LOADS =
      "the name of a load, several such as [barrel, jib weight], or all (but weights)";

  private final Reading reading;
  private Optional<Driving> driving = Optional.empty();
  private Optional<Spot> loads = Optional.empty();
  private Optional<Spot> tell = Optional.empty();

  DrivingReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads the loads; the asks need the device. */
  void read(Fields top) {
    Optional<Spot> spot = top.find("driving");
    Optional<Fields> fields = spot.flatMap(one -> one.fields(EXAMPLE));
    if (spot.isEmpty() || fields.isEmpty()) {
      return;
    }
    if (!top.has("sizing")) {
      top.need("sizing", "sections and materials, of which one gives first");
      return;
    }
    fields.get().only(FileKeys.DRIVING);
    tell = fields.get().find("tell");
    loads = fields.get().need("loads", LOADS);
    Draft draft = new Draft(reading, "driving", spot.get(), fields.get());
    driving = loads.flatMap(one -> loads(draft, one));
  }

  private Optional<Driving> loads(Draft draft, Spot spot) {
    List<String> names = new ArrayList<>();
    if (!spot.textIfAny().filter(LimitsReader.ALL::equals).isPresent()) {
      List<Spot> items = spot.isItems() ? spot.itemsIfAny() : List.of(spot);
      if (items.isEmpty()) {
        return spot.refuse(LOADS);
      }
      for (Spot item : items) {
        Optional<String> name = item.text(LOADS);
        boolean given = name.filter(one -> new GivenLoads(reading).has(one, item)).isPresent();
        names.add(draft.orFail(name.filter(one -> given), ""));
      }
    }
    return draft.made(
        () -> {
          LimitAsk.named("driving", new Variation.Multiple(names));
          return new Driving(names, List.of());
        });
  }

  /** With its asks; what the device cannot answer is reported. */
  Optional<Driving> checked(Optional<Device> device, AsksReader asks) {
    List<Ask> told = tell.map(asks::asks).orElse(List.of());
    if (driving.isEmpty() || device.isEmpty()) {
      return Optional.empty();
    }
    List<Spot> items = tell.map(Spot::itemsIfAny).orElse(List.of());
    for (int i = 0; i < told.size() && told.size() == items.size(); i++) {
      if (!TravelCheck.isNumber(told.get(i))) {
        items.get(i).report("an ask for a number that balance gives, in no case");
      }
    }
    try {
      LimitAsk.of(driving.get().variation()).check(device.get());
    } catch (ModelException e) {
      e.problems()
          .forEach(
              problem ->
                  loads.ifPresent(
                      spot -> spot.report(Excerpt.quoted(problem.field()), problem.wanted())));
    }
    return Optional.of(new Driving(driving.get().loads(), told));
  }
}
