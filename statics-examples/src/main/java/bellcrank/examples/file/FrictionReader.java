package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import java.util.Map;
import java.util.Optional;

/** Reads a coefficient of friction: a number, or a row of the friction table. */
final class FrictionReader {

  private static final Map<String, TableFriction.Take> TAKE =
      Map.of("lowest", TableFriction.Take.LOWEST, "highest", TableFriction.Take.HIGHEST);

  private final Reading reading;

  FrictionReader(Reading reading) {
    this.reading = reading;
  }

  /** Friction that must be there. */
  double read(Draft draft) {
    return draft.fields().need("friction", Dimension.NUMBER.noun()).isPresent()
        ? read(draft, 1)
        : draft.orFail(Optional.empty(), 1.0);
  }

  /** Friction that may be left out. */
  double read(Draft draft, double otherwise) {
    Optional<Spot> spot = draft.fields().find("friction").filter(Spot::isFields);
    return spot.isPresent()
        ? draft.orFail(taken(draft, spot.get()), 1.0)
        : draft.amount("friction", Dimension.NUMBER, otherwise);
  }

  private Optional<Double> taken(Draft draft, Spot spot) {
    Optional<Fields> fields = spot.fields("a row of the friction table");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.FRICTION);
    String wanted = "the name of a row of the friction table";
    Optional<Spot> table = fields.get().need("table", wanted);
    Optional<String> row = table.flatMap(one -> one.text(wanted));
    Draft own = new Draft(reading, draft.part(), spot, fields.get());
    Optional<TableFriction.Take> take =
        fields.get().has("take")
            ? Optional.of(own.choice("take", TAKE, TableFriction.Take.LOWEST))
            : Optional.empty();
    if (row.isEmpty() || !own.isSound()) {
      return Optional.empty();
    }
    try {
      TableFriction friction = new TableFriction(draft.part(), row.get(), take);
      reading.tables().add(friction);
      return Optional.of(friction.value());
    } catch (ModelException e) {
      e.problems().forEach(one -> table.ifPresent(at -> at.report(one.value(), one.wanted())));
      return Optional.empty();
    }
  }
}
