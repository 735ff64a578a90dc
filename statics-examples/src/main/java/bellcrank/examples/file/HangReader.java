package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code hang} and {@code balance point}. */
final class HangReader {

  private final Reading reading;
  private final List<HangPlan> hangs = new ArrayList<>();
  private final List<HangPlan> handles = new ArrayList<>();
  private final Map<HangPlan, Spot> spots = new LinkedHashMap<>();

  HangReader(Reading reading) {
    this.reading = reading;
  }

  List<HangPlan> hangs() {
    return hangs;
  }

  List<HangPlan> handles() {
    return handles;
  }

  void hang(Named named) {
    draft(named, "how it is carried, such as {from: hook}")
        .ifPresent(
            draft -> {
              draft.fields().only(FileKeys.HANG);
              String from = draft.place("from");
              add(draft, named, from, Optional.empty(), hangs);
            });
  }

  void handle(Named named) {
    draft(named, "where a handle can be, such as {line: [A, B]}")
        .ifPresent(
            draft -> {
              draft.fields().only(FileKeys.BALANCE_POINT);
              List<String> line = draft.twoPlaces("line");
              add(draft, named, line.get(0), Optional.of(line.get(1)), handles);
            });
  }

  private Optional<Draft> draft(Named named, String wanted) {
    return named
        .value()
        .fields(wanted)
        .map(fields -> new Draft(reading, named.text(), named.name(), fields));
  }

  private void add(
      Draft draft, Named named, String from, Optional<String> to, List<HangPlan> plans) {
    List<String> bodies = new ArrayList<>();
    Optional<Spot> stated = draft.fields().find("bodies");
    if (stated.isPresent()) {
      List<Spot> items =
          draft.orFail(stated.get().items("names of bodies, such as [lid, arm]"), List.of());
      items.forEach(item -> bodies.add(draft.orFail(reading.bodies().body(item), "")));
    }
    draft
        .made(() -> new HangPlan(named.text(), from, to, bodies))
        .ifPresent(
            plan -> {
              plans.add(plan);
              spots.put(plan, named.value());
            });
  }

  /** Reports what keeps the device from being carried so. */
  void check(Device device) {
    spots.forEach(
        (plan, spot) -> {
          try {
            plan.check(device);
          } catch (ModelException e) {
            e.problems().forEach(one -> spot.report(one.field() + " " + one.value(), one.wanted()));
          }
        });
  }
}
