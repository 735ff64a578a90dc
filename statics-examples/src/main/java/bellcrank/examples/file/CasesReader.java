package bellcrank.examples.file;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code cases} and {@code advantage}, which name loads. */
final class CasesReader {

  private final Reading reading;

  CasesReader(Reading reading) {
    this.reading = reading;
  }

  void read(Named named) {
    Optional<Fields> fields = named.value().fields("a case, such as {factors: {snow: 1.5}}");
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.CASE);
    reading.index().add(PartIndex.Section.CASE, named.text(), named.name(), fields);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    Map<String, Double> factors = new LinkedHashMap<>();
    Optional<Fields> stated =
        fields.get().find("factors").flatMap(spot -> spot.fields("factors such as {snow: 1.5}"));
    if (draft.has("factors") && stated.isEmpty()) {
      draft.fail();
    }
    for (Named factor : stated.map(Fields::named).orElse(List.of())) {
      factors.put(factor.text(), draft.amount(factor.value(), Dimension.NUMBER));
      if (!new GivenLoads(reading).has(factor.text(), factor.name())) {
        draft.fail();
      }
    }
    double dynamic = draft.amount("dynamic", Dimension.NUMBER, 1);
    draft
        .made(() -> new LoadCase(named.text(), factors, dynamic))
        .ifPresent(reading.device()::loadCase);
  }

  /** Reads the two forces of the mechanical advantage. */
  void advantage(Spot spot) {
    Optional<Fields> fields = spot.fields("two forces, such as {effort: hand, resistance: ram}");
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.ADVANTAGE);
    reading.index().add(PartIndex.Section.ADVANTAGE, "advantage", spot, fields);
    Draft draft = new Draft(reading, "advantage", spot, fields.get());
    String effort = part(draft, "effort");
    String resistance = part(draft, "resistance");
    draft.made(() -> reading.device().advantage(effort, resistance));
  }

  private String part(Draft draft, String key) {
    Optional<Spot> spot =
        draft.fields().need(key, "the name of a load, sought quantity or connection");
    Optional<String> name =
        spot.flatMap(stated -> stated.text("the name of a load, sought quantity or connection"));
    PartNames parts = reading.parts();
    if (spot.isPresent() && name.isPresent() && !parts.isDeclared(name.get())) {
      List<String> known = new ArrayList<>(parts.names());
      spot.get()
          .report(
              reading.problems().name("load, sought quantity or connection", name.get(), known));
    }
    return draft.orFail(
        name.filter(known -> parts.load(known).isPresent() || parts.connection(known).isPresent()),
        "");
  }
}
