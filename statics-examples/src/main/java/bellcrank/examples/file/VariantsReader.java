package bellcrank.examples.file;

import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Variants.Compared;
import bellcrank.statics.study.Variants.Wish;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code variants}: what is set beside the device as stated. */
final class VariantsReader {

  private static final String WISH = "which way it is better: less, more or neither";

  private final StudyNumbers numbers;

  VariantsReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  /** The word for a wish. */
  static String word(Wish wish) {
    return wish.name().toLowerCase(Locale.ROOT);
  }

  Optional<VariantsPlan> read(Spot spot) {
    Optional<Fields> fields =
        spot.fields("variants, such as {compare: {hand: less}, changes: {long: {x of grip: 2 m}}}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.VARIANTS);
    Draft draft = new Draft(numbers.reading(), "variants", spot, fields.get());
    List<Compared> compared = new ArrayList<>();
    for (Named named : named(draft, "compare", "asks with which way they are better")) {
      Optional<Figure> figure = numbers.figure(named.name());
      Optional<Wish> wish = wish(named.value());
      if (figure.isPresent() && wish.isPresent()) {
        compared.add(new Compared(figure.get(), wish.get()));
      } else {
        draft.fail();
      }
    }
    List<VariantsPlan.Change> changes = new ArrayList<>();
    for (Named named : named(draft, "changes", "variants, such as {long: {x of grip: 2 m}}")) {
      change(named).ifPresentOrElse(changes::add, draft::fail);
    }
    return draft.made(() -> new VariantsPlan(compared, changes));
  }

  private static List<Named> named(Draft draft, String key, String wanted) {
    return draft.orFail(
        draft.fields().need(key, wanted).flatMap(one -> one.fields(wanted)).map(Fields::named),
        List.<Named>of());
  }

  private static Optional<Wish> wish(Spot spot) {
    Optional<String> text = spot.text(WISH);
    for (Wish wish : Wish.values()) {
      if (text.filter(word(wish)::equals).isPresent()) {
        return Optional.of(wish);
      }
    }
    return text.isPresent() ? spot.refuse(WISH) : Optional.empty();
  }

  private Optional<VariantsPlan.Change> change(Named named) {
    Map<Input, Double> values = new LinkedHashMap<>();
    Optional<Fields> fields = named.value().fields("numbers that differ, such as {x of grip: 2 m}");
    boolean sound = fields.isPresent();
    for (Named one : fields.map(Fields::named).orElse(List.of())) {
      Optional<Input> input = numbers.input(one.name());
      Optional<Double> value = input.flatMap(known -> numbers.amount(one.value(), known));
      if (value.isPresent() && values.containsKey(input.get())) {
        one.name().report("each number once");
        sound = false;
      } else if (value.isPresent()) {
        values.put(input.get(), value.get());
      } else {
        sound = false;
      }
    }
    if (!sound) {
      return Optional.empty();
    }
    return numbers.made(
        named.name(),
        () -> {
          VariantsPlan.Change change = new VariantsPlan.Change(named.text(), values);
          numbers.file().ifPresent(file -> change.of(file.model()));
          return change;
        });
  }
}
