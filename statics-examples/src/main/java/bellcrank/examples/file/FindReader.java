package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code find}: the unknowns before the device is built, the rest with it. */
final class FindReader {

  private static final String EXAMPLE =
      "a search, such as {unknown: {mass: stone}, from: 1 kg, to: 9 kg, ask: hand, equals: 0 N}";

  private final Reading reading;
  private final List<Begun> begun = new ArrayList<>();

  /** A search whose unknown is read. */
  private record Begun(Named named, Fields fields, Optional<FindUnknown> unknown) {}

  FindReader(Reading reading) {
    this.reading = reading;
  }

  void read(Named named) {
    Optional<Fields> fields = named.value().fields(EXAMPLE);
    if (fields.isEmpty()) {
      return;
    }
    fields.get().only(FileKeys.FIND);
    Optional<FindUnknown> unknown =
        fields
            .get()
            .need("unknown", UnknownReader.EXAMPLE)
            .flatMap(spot -> new UnknownReader(reading).read(named.text(), spot));
    begun.add(new Begun(named, fields.get(), unknown));
  }

  List<FindPlan> plans(Optional<Device> device, AsksReader asks, Optional<TravelPlan> travel) {
    List<FindPlan> plans = new ArrayList<>();
    for (Begun one : begun) {
      plan(one, asks, travel)
          .filter(plan -> device.isPresent() && isSound(one, plan, device.get(), travel))
          .ifPresent(plans::add);
    }
    return plans;
  }

  private static boolean isSound(
      Begun one, FindPlan plan, Device device, Optional<TravelPlan> travel) {
    try {
      plan.check(device, travel);
      return true;
    } catch (ModelException e) {
      Spot spot = one.fields().find("unknown").orElse(one.named().name());
      e.problems().forEach(problem -> spot.report(problem.value(), problem.wanted()));
      return false;
    }
  }

  private Optional<FindPlan> plan(Begun one, AsksReader asks, Optional<TravelPlan> travel) {
    Fields fields = one.fields();
    Draft draft = new Draft(reading, one.named().text(), one.named().name(), fields);
    Optional<Ask> ask =
        fields.need("ask", "an ask such as heel.x, answered by a number").flatMap(asks::numberAsk);
    Optional<Quantity> target =
        fields
            .need("equals", "what the answer shall be, such as 0 N")
            .flatMap(spot -> ask.flatMap(asked -> target(spot, asked)));
    if (one.unknown().isEmpty()) {
      return Optional.empty();
    }
    FindUnknown unknown = one.unknown().get();
    Dimension dimension = unknown.dimension(travel);
    boolean ranged = !(unknown instanceof FindUnknown.Driven);
    Optional<FindPlan.Range> range = ranged ? range(draft, dimension) : noRange(draft);
    Optional<FindPlan.Values> expected = expected(draft, dimension);
    if (ask.isEmpty() || target.isEmpty() || (ranged && range.isEmpty())) {
      return Optional.empty();
    }
    return draft.made(
        () -> new FindPlan(one.named().text(), unknown, range, ask.get(), target.get(), expected));
  }

  private Optional<Quantity> target(Spot spot, Ask ask) {
    Dimension dimension = AskDimension.of(ask, reading.parts()).orElseThrow();
    return amount(spot, dimension).map(si -> new Quantity(si, dimension));
  }

  private Optional<Double> amount(Spot spot, Dimension dimension) {
    return reading.values().ofKind(spot, dimension);
  }

  private Optional<FindPlan.Range> range(Draft draft, Dimension dimension) {
    Optional<Double> from =
        draft.fields().need("from", "the least value").flatMap(spot -> amount(spot, dimension));
    Optional<Double> to =
        draft.fields().need("to", "the greatest value").flatMap(spot -> amount(spot, dimension));
    return from.isPresent() && to.isPresent()
        ? draft.made(() -> new FindPlan.Range(from.get(), to.get()))
        : Optional.empty();
  }

  private static Optional<FindPlan.Range> noRange(Draft draft) {
    for (String key : List.of("from", "to")) {
      draft
          .fields()
          .find(key)
          .ifPresent(
              spot -> {
                spot.report("the key " + key, "no range: the drive is looked for over its travel");
                draft.fail();
              });
    }
    return Optional.empty();
  }

  private Optional<FindPlan.Values> expected(Draft find, Dimension dimension) {
    Optional<Spot> stated = find.fields().find("expect");
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    Optional<Fields> fields =
        stated.get().fields("values that should be found, such as {values: [12 kg], digits: 4}");
    if (fields.isEmpty()) {
      find.fail();
      return Optional.empty();
    }
    fields.get().only(FileKeys.FOUND);
    Draft draft = new Draft(reading, find.part(), stated.get(), fields.get());
    List<Spot> items =
        draft.orFail(
            fields
                .get()
                .need("values", "a list of values, empty if none should be found")
                .flatMap(spot -> spot.items("a list of values, empty if none should be found")),
            List.of());
    List<Expected.Amount> values = new ArrayList<>();
    for (Spot item : items) {
      draft.orFail(amountWithUnit(draft, item, dimension).map(values::add), true);
    }
    int digits = values.isEmpty() ? draft.wholeNumber("digits", 1, 0) : digits(draft);
    Optional<String> source = fields.get().find("source").flatMap(spot -> spot.text("a text"));
    Optional<FindPlan.Values> made = draft.made(() -> new FindPlan.Values(values, digits, source));
    if (made.isEmpty()) {
      find.fail();
    }
    return made;
  }

  private static int digits(Draft draft) {
    return draft.orFail(
        draft
            .fields()
            .need("digits", "the number of significant digits")
            .flatMap(spot -> WholeNumber.read(spot, 1, Expectation.MOST_DIGITS)),
        1);
  }

  private Optional<Expected.Amount> amountWithUnit(Draft draft, Spot spot, Dimension dimension) {
    return reading
        .values()
        .amount(spot, dimension)
        .flatMap(
            si ->
                reading
                    .values()
                    .unit(spot, dimension)
                    .flatMap(
                        unit ->
                            draft.made(
                                () -> new Expected.Amount(new Quantity(si, dimension), unit))));
  }
}
