package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.motion.Deflection;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code measured lines}. */
final class MeasuredLineReader {

  private static final String EXAMPLE =
      "what was measured, such as {force: 100 N, span: 5 m, deflection: 80 mm}";

  private final Reading reading;
  private final AsksReader asks;
  private final List<MeasuredLine> lines = new ArrayList<>();

  MeasuredLineReader(Reading reading, AsksReader asks) {
    this.reading = reading;
    this.asks = asks;
  }

  List<MeasuredLine> lines() {
    return lines;
  }

  void read(Named named) {
    Optional<Fields> fields = named.value().fields(EXAMPLE);
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.MEASURED_LINE);
    Draft draft = new Draft(reading, named.text(), named.name(), fields.get());
    double force = draft.amount("force", Dimension.FORCE);
    double span = draft.amount("span", Dimension.LENGTH);
    double at = draft.amount("at", Dimension.LENGTH, span / 2);
    double deflection = draft.amount("deflection", Dimension.LENGTH);
    Optional<Double> stiffness =
        WinchReader.optional(draft, "stiffness", Dimension.FORCE_PER_LENGTH);
    Optional<Spot> asked = fields.get().find("beside");
    Optional<Ask> beside = asked.flatMap(asks::numberAsk);
    if (asked.isPresent()) {
      draft.orFail(beside, Ask.of(named.text()));
    }
    Deflection.Errors errors = errors(draft);
    draft
        .made(() -> measured(force, span, at, deflection))
        .flatMap(
            measured ->
                draft.made(
                    () -> new MeasuredLine(named.text(), measured, errors, stiffness, beside)))
        .ifPresent(lines::add);
  }

  /** What was measured, its mistakes told by the keys of the file. */
  private static Deflection measured(double force, double span, double at, double deflection) {
    try {
      return new Deflection(force, span, at, deflection);
    } catch (ModelException e) {
      throw new ModelException(
          e.problems().stream()
              .map(
                  one ->
                      one.field().equals("place along the span")
                          ? new Problem(one.part(), "at", one.value(), one.wanted())
                          : one)
              .toList());
    }
  }

  private Deflection.Errors errors(Draft line) {
    Deflection.Errors none = new Deflection.Errors(0, 0, 0, 0);
    Optional<Spot> stated = line.fields().find("errors");
    if (stated.isEmpty()) {
      return none;
    }
    Optional<Fields> fields =
        stated.get().fields("errors of measuring, such as {force: 5 N, deflection: 2 mm}");
    if (fields.isEmpty()) {
      line.fail();
      return none;
    }
    fields.get().only(FileKeys.ERRORS);
    Draft draft = new Draft(reading, line.part(), stated.get(), fields.get());
    double force = draft.amount("force", Dimension.FORCE, 0);
    double span = draft.amount("span", Dimension.LENGTH, 0);
    double at = draft.amount("at", Dimension.LENGTH, 0);
    double deflection = draft.amount("deflection", Dimension.LENGTH, 0);
    return line.orFail(draft.made(() -> new Deflection.Errors(force, span, at, deflection)), none);
  }
}
