package bellcrank.examples.file;

import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Free;
import bellcrank.statics.study.Goal;
import bellcrank.statics.study.Input;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code search}: for which numbers goals hold. */
final class SearchReader {

  /** Stands for the first case. */
  static final String TRUE = "true";

  /** What is expected where no numbers will do. */
  static final String NONE = "none";

  private static final String EXAMPLE =
      "a search, such as {change: {x of ram: [0.2 m, 0.6 m]}, goals: {ram: {at most: 3 kN}}}";
  private static final String BOUNDS =
      "two bounds, the least first, such as [0.2 m, 0.6 m]: a search needs an end";
  private static final String GOAL = "a goal, such as {at most: 3 kN}";

  private final StudyNumbers numbers;

  SearchReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  Optional<SearchPlan> read(Named named) {
    Optional<Fields> fields = named.value().fields(EXAMPLE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.SEARCH);
    Draft draft = new Draft(numbers.reading(), named.text(), named.name(), fields.get());
    List<Free> free =
        fields
            .get()
            .need("change", "numbers with their bounds, such as {x of ram: [0.2 m, 0.6 m]}")
            .map(spot -> free(draft, spot))
            .orElse(List.of());
    Optional<SearchPlan.Aim> aim = aim(draft, free);
    List<Goal> goals = goals(draft);
    Optional<Spot> wanted = fields.get().find("expect");
    Optional<SearchPlan.Values> expected = wanted.flatMap(spot -> expected(spot, named, free, aim));
    if (wanted.isPresent() && expected.isEmpty()) {
      draft.fail();
    }
    if (free.isEmpty()) {
      return Optional.empty();
    }
    return draft
        .made(() -> new SearchPlan(named.text(), free, aim, goals, expected))
        .flatMap(
            plan ->
                numbers.made(
                    fields.get().find("change").orElse(named.name()),
                    () -> {
                      numbers.file().ifPresent(plan::check);
                      return plan;
                    }));
  }

  private List<Free> free(Draft draft, Spot spot) {
    List<Free> free = new ArrayList<>();
    Optional<Fields> fields = spot.fields("numbers with their bounds");
    if (fields.isPresent() && fields.get().named().isEmpty()) {
      spot.report("at least one number with its bounds");
    }
    for (Named named : fields.map(Fields::named).orElse(List.of())) {
      Optional<Input> input = numbers.input(named.name());
      Optional<List<Spot>> items = named.value().items(BOUNDS);
      if (items.isPresent() && items.get().size() != 2) {
        named.value().report(BOUNDS);
        draft.fail();
      } else if (input.isEmpty() || items.isEmpty()) {
        draft.fail();
      } else {
        Optional<Double> from = numbers.amount(items.get().get(0), input.get());
        Optional<Double> to = numbers.amount(items.get().get(1), input.get());
        if (from.isPresent() && to.isPresent()) {
          free(named, input.get(), from.get() + 0.0, to.get() + 0.0).ifPresent(free::add);
        } else {
          draft.fail();
        }
      }
    }
    return free;
  }

  private static Optional<Free> free(Named named, Input input, double from, double to) {
    if (from < to) {
      return Optional.of(new Free(input, from, to));
    }
    List<String> written =
        named.value().itemsIfAny().stream().flatMap(item -> item.textIfAny().stream()).toList();
    return named
        .value()
        .refuse(
            "bounds " + Excerpt.cut(String.join(" to ", written)),
            "the least one first, the other above it");
  }

  private Optional<SearchPlan.Aim> aim(Draft draft, List<Free> free) {
    Optional<Spot> least = draft.fields().find("least");
    Optional<Spot> greatest = draft.fields().find("greatest");
    if (least.isPresent() && greatest.isPresent()) {
      draft.fail();
      return draft.name().refuse("least and greatest", "one of the two");
    }
    Optional<Spot> spot = least.or(() -> greatest);
    if (spot.isEmpty()) {
      return Optional.empty();
    }
    Optional<Input> input =
        free.stream()
            .map(Free::input)
            .filter(one -> spot.get().textIfAny().filter(one.text()::equals).isPresent())
            .findFirst();
    if (input.isEmpty() && changes(draft, spot.get())) {
      // what is wrong with its bounds is reported there
      draft.fail();
      return Optional.empty();
    }
    Optional<Figure> figure = input.isPresent() ? Optional.empty() : numbers.figure(spot.get());
    if (input.isEmpty() && figure.isEmpty()) {
      draft.fail();
      return Optional.empty();
    }
    return Optional.of(new SearchPlan.Aim(greatest.isPresent(), figure, input));
  }

  /** Whether a text is one of the numbers that change, whether or not it could be read. */
  private static boolean changes(Draft draft, Spot spot) {
    return draft
        .fields()
        .find("change")
        .filter(Spot::isFields)
        .flatMap(change -> change.fields(""))
        .map(Fields::named)
        .orElse(List.of())
        .stream()
        .anyMatch(named -> spot.textIfAny().filter(named.text()::equals).isPresent());
  }

  private List<Goal> goals(Draft draft) {
    List<Goal> goals = new ArrayList<>();
    for (Named named :
        draft
            .fields()
            .find("goals")
            .flatMap(spot -> spot.fields("goals, such as {ram: {at most: 3 kN}}"))
            .map(Fields::named)
            .orElse(List.of())) {
      Optional<Figure> figure = numbers.figure(named.name());
      Optional<Fields> fields = named.value().fields(GOAL);
      Optional<Goal> goal =
          figure.isPresent() && fields.isPresent()
              ? goal(figure.get(), named, fields.get())
              : Optional.empty();
      goal.ifPresentOrElse(goals::add, draft::fail);
    }
    draft.fields().find("stands").ifPresent(spot -> stands(draft, spot, goals));
    return goals;
  }

  private Optional<Goal> goal(Figure figure, Named named, Fields fields) {
    fields.only(FileKeys.GOAL);
    Optional<Quantity> most = fields.find("at most").flatMap(spot -> bound(spot, figure));
    Optional<Quantity> least = fields.find("at least").flatMap(spot -> bound(spot, figure));
    Optional<Quantity> equal = fields.find("equals").flatMap(spot -> bound(spot, figure));
    int stated = fields.present(FileKeys.GOAL).size();
    long read = most.stream().count() + least.stream().count() + equal.stream().count();
    if (read < stated) {
      return Optional.empty();
    }
    if (stated == 0 && !fields.named().isEmpty()) {
      // other keys are reported as such
      return Optional.empty();
    }
    if (stated == 0 || (equal.isPresent() && stated > 1)) {
      return named
          .value()
          .refuse(
              stated == 0 ? "no goal" : "several goals",
              "at most, at least or both, or equals alone");
    }
    if (equal.isPresent()) {
      return Optional.of(Goal.equal(figure, equal.get()));
    }
    if (most.isPresent() && least.isPresent()) {
      return numbers.made(named.value(), () -> Goal.between(figure, least.get(), most.get()));
    }
    return most.map(one -> Goal.atMost(figure, one))
        .or(() -> least.map(one -> Goal.atLeast(figure, one)));
  }

  private Optional<Quantity> bound(Spot spot, Figure figure) {
    Dimension dimension = numbers.dimension(figure);
    return numbers
        .reading()
        .values()
        .ofKind(spot, dimension)
        .map(si -> new Quantity(si, dimension));
  }

  private void stands(Draft draft, Spot spot, List<Goal> goals) {
    String wanted = "true for the first case, or a list of cases such as [calm, storm]";
    if (spot.textIfAny().filter(TRUE::equals).isPresent()) {
      goals.add(Goal.stands());
      return;
    }
    List<Spot> items = draft.orFail(spot.items(wanted), List.of());
    if (spot.isItems() && items.isEmpty()) {
      spot.report(wanted);
      draft.fail();
    }
    for (Spot item : items) {
      Optional<Goal> goal =
          item.text("the name of a case")
              .flatMap(
                  name ->
                      numbers.made(
                          item,
                          () -> {
                            numbers.file().ifPresent(one -> one.model().device().loadCase(name));
                            return Goal.stands(name);
                          }));
      goal.ifPresentOrElse(goals::add, draft::fail);
    }
  }

  private Optional<SearchPlan.Values> expected(
      Spot spot, Named named, List<Free> free, Optional<SearchPlan.Aim> aim) {
    Optional<Fields> fields =
        spot.fields("what should be found, such as {values: {x of ram: 0.4 m}, digits: 3}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.SEARCHED);
    Draft draft = new Draft(numbers.reading(), named.text(), spot, fields.get());
    Map<Input, Expected.Amount> values = new LinkedHashMap<>();
    Optional<Spot> stated =
        fields.get().need("values", "values such as {x of ram: 0.4 m}, or none");
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    boolean none = stated.get().textIfAny().filter(NONE::equals).isPresent();
    if (!none) {
      List<Named> all =
          draft.orFail(stated.get().fields("values, or none").map(Fields::named), List.<Named>of());
      if (all.isEmpty()) {
        stated.get().report("at least one value, or none");
        return Optional.empty();
      }
      for (Named one : all) {
        Optional<Input> input =
            free.stream().map(Free::input).filter(in -> in.text().equals(one.text())).findFirst();
        if (input.isEmpty()) {
          one.name().report("one of the numbers that change");
          draft.fail();
        } else {
          draft.orFail(
              amount(one.value(), input.get().dimension())
                  .map(amount -> values.put(input.get(), amount) == null),
              true);
        }
      }
    }
    Optional<Expected.Amount> reaches =
        fields
            .get()
            .find("reaches")
            .flatMap(
                one ->
                    aim.flatMap(SearchPlan.Aim::figure)
                        .flatMap(figure -> amount(one, numbers.dimension(figure))));
    if (fields.get().has("reaches") && reaches.isEmpty()) {
      if (aim.flatMap(SearchPlan.Aim::figure).isEmpty()) {
        fields
            .get()
            .find("reaches")
            .ifPresent(one -> one.report("none, since no figure shall be least or greatest"));
      }
      draft.fail();
    }
    int digits =
        none
            ? draft.wholeNumber("digits", 1, 0)
            : draft.orFail(
                fields
                    .get()
                    .need("digits", "the number of significant digits")
                    .flatMap(one -> WholeNumber.read(one, 1, Expectation.MOST_DIGITS)),
                1);
    Optional<String> source = fields.get().find("source").flatMap(one -> one.text("a text"));
    return draft.made(() -> new SearchPlan.Values(values, reaches, digits, source));
  }

  private Optional<Expected.Amount> amount(Spot spot, Dimension dimension) {
    Optional<Double> si = numbers.reading().values().ofKind(spot, dimension);
    return si.flatMap(
        value ->
            numbers
                .reading()
                .values()
                .unit(spot, dimension)
                .flatMap(
                    unit ->
                        numbers.made(
                            spot,
                            () -> new Expected.Amount(new Quantity(value, dimension), unit))));
  }
}
