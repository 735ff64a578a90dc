package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads {@code rough}: numbers that are not known well. */
final class RoughReader {

  private static final String EXAMPLE = "how it may differ, such as {within: 10 %}";

  private final StudyNumbers numbers;
  private final Map<Input, Mark> seen = new HashMap<>();

  RoughReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  List<Uncertain> read(Spot spot) {
    List<Uncertain> all = new ArrayList<>();
    for (Named named :
        spot.fields("numbers with how they may differ, such as x of ram: {within: 5 mm}")
            .map(Fields::named)
            .orElse(List.of())) {
      Optional<Input> input = numbers.input(named.name());
      Optional<Fields> fields = named.value().fields(EXAMPLE);
      Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "spread", FileKeys.SPREADS));
      if (input.isPresent() && kind.isPresent()) {
        if (seen.putIfAbsent(input.get(), named.name().mark()) != null) {
          named.name().report("each number once");
        }
        spread(fields.get(), kind.get(), input.get())
            .ifPresent(spread -> all.add(new Uncertain(input.get(), spread)));
      }
    }
    return all;
  }

  private Optional<Spread> spread(Fields fields, String kind, Input input) {
    Spot main = fields.find(kind).orElse(fields.whole());
    return switch (kind) {
      case "within" ->
          width(main, input).flatMap(either -> made(main, one -> Spread.within(either)));
      case "plus" -> {
        Optional<Double> plus = width(main, input);
        Optional<Double> minus =
            fields.has("minus")
                ? fields.find("minus").flatMap(spot -> width(spot, input))
                : Optional.of(0.0);
        yield plus.isPresent() && minus.isPresent()
            ? made(main, one -> new Spread.Within(minus.get(), plus.get()))
            : Optional.empty();
      }
      case "normal" -> {
        Optional<Double> deviation = width(main, input);
        Optional<Double> mean =
            fields.has("mean")
                ? fields.find("mean").flatMap(spot -> numbers.amount(spot, input))
                : Optional.of(numbers.value(input));
        yield deviation.isPresent() && mean.isPresent()
            ? made(main, one -> new Spread.Normal(mean.get(), deviation.get()))
            : Optional.empty();
      }
      case "uniform" ->
          values(main, input, 2, "two bounds, the least first, such as [0.3, 0.5]")
              .flatMap(at -> made(main, one -> new Spread.Uniform(at.get(0), at.get(1))));
      default ->
          values(main, input, 3, "least, likeliest and greatest value, such as [0.3, 0.4, 0.5]")
              .flatMap(
                  at ->
                      at.get(0) <= at.get(1) && at.get(1) <= at.get(2)
                          ? made(
                              main, one -> new Spread.Triangular(at.get(0), at.get(1), at.get(2)))
                          : main.refuse("least, likeliest and greatest value, in this order"));
    };
  }

  /** A width in the unit of the number, or a share of it in per cent. */
  private Optional<Double> width(Spot spot, Input input) {
    Optional<String> text = spot.textIfAny();
    if (text.isEmpty() || !text.get().strip().endsWith("%")) {
      return numbers.amount(spot, input);
    }
    double stated = numbers.value(input);
    if (stated == 0) {
      return spot.refuse("a width with a unit, since a share of 0 is nothing");
    }
    return numbers
        .reading()
        .values()
        .amount(spot, Dimension.NUMBER)
        .map(share -> share * Math.abs(stated));
  }

  private Optional<List<Double>> values(Spot spot, Input input, int count, String wanted) {
    Optional<List<Spot>> items = spot.items(wanted);
    if (items.isEmpty()) {
      return Optional.empty();
    }
    if (items.get().size() != count) {
      return spot.refuse(wanted);
    }
    List<Double> values = new ArrayList<>();
    items.get().forEach(item -> numbers.amount(item, input).ifPresent(values::add));
    return values.size() == count ? Optional.of(values) : Optional.empty();
  }

  /** The spread, with the numbers as they are written where they do not fit together. */
  private static Optional<Spread> made(Spot spot, Function<Spot, Spread> maker) {
    try {
      return Optional.of(maker.apply(spot));
    } catch (ModelException e) {
      for (Problem problem : e.problems()) {
        spot.report(problem.field() + " " + written(spot, problem), problem.wanted());
      }
      return Optional.empty();
    }
  }

  private static String written(Spot spot, Problem problem) {
    List<String> items =
        spot.itemsIfAny().stream().flatMap(item -> item.textIfAny().stream()).toList();
    return items.isEmpty()
        ? spot.textIfAny().map(Excerpt::cut).orElse(problem.value())
        : Excerpt.cut(String.join(" to ", items));
  }
}
