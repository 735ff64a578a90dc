package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.study.Combinations.Group;
import bellcrank.statics.study.Combinations.Permanent;
import bellcrank.statics.study.Combinations.Variable;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code combinations}: cases made of groups of loads. */
final class CombinationsReader {

  /** Over what extremes are looked for beside the cases. */
  static final String TRAVEL = "travel";

  private static final String LOADS = "the name of a load, or several such as [snow, wind]";

  private final StudyNumbers numbers;

  CombinationsReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  Optional<CombinationsPlan> read(Spot spot) {
    Optional<Fields> fields =
        spot.fields(
            "combinations, such as {groups: {wind: {leading: 1.5, loads: wind}}, asks: [foot]}");
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.COMBINATIONS);
    Draft draft = new Draft(numbers.reading(), "combinations", spot, fields.get());
    List<Group> groups = new ArrayList<>();
    String wanted = "groups of loads, such as {wind: {leading: 1.5, loads: wind}}";
    for (Named named :
        draft.orFail(
            fields
                .get()
                .need("groups", wanted)
                .flatMap(one -> one.fields(wanted))
                .map(Fields::named),
            List.<Named>of())) {
      group(named).ifPresentOrElse(groups::add, draft::fail);
    }
    List<Ask> asks =
        fields
            .get()
            .need("asks", "a list of asks such as [ram, heel.x]")
            .map(numbers::plainAsks)
            .orElse(List.of());
    Optional<Spot> over = fields.get().find("over");
    over.ifPresent(one -> over(draft, one));
    if (asks.isEmpty()) {
      fields
          .get()
          .find("asks")
          .filter(one -> one.isItems() && one.itemsIfAny().isEmpty())
          .ifPresent(one -> one.report("at least one ask"));
      return Optional.empty();
    }
    return draft
        .made(() -> new CombinationsPlan(groups, asks, over.isPresent()))
        .flatMap(
            plan ->
                numbers.made(
                    fields.get().find("groups").orElse(spot),
                    () -> {
                      numbers.file().ifPresent(plan::check);
                      return plan;
                    }));
  }

  private void over(Draft draft, Spot spot) {
    Optional<String> word = spot.text(TRAVEL);
    if (word.filter(TRAVEL::equals).isEmpty()) {
      word.ifPresent(one -> spot.report(TRAVEL));
      draft.fail();
    } else if (numbers.stated().travel().isEmpty()) {
      spot.report("a file with a drive and travel");
      draft.fail();
    }
  }

  private Optional<Group> group(Named named) {
    Optional<Fields> fields =
        named.value().fields("a group, such as {leading: 1.5, accompanying: 0.6, loads: wind}");
    Optional<String> kind = fields.flatMap(keys -> KindOf.part(keys, "group", FileKeys.GROUPS));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = new Draft(numbers.reading(), named.text(), named.name(), fields.get());
    List<String> loads =
        draft.orFail(
            fields.get().need("loads", LOADS).map(spot -> loads(draft, spot)), List.<String>of());
    double first = draft.amount(kind.get(), Dimension.NUMBER);
    if (kind.get().equals("leading")) {
      double beside = draft.amount("accompanying", Dimension.NUMBER, 0);
      return draft.made(() -> new Variable(named.text(), loads, first, beside));
    }
    double helping = draft.amount("favourable", Dimension.NUMBER, first);
    return draft.made(() -> new Permanent(named.text(), loads, first, helping));
  }

  private List<String> loads(Draft draft, Spot spot) {
    List<Spot> items = spot.isItems() ? spot.itemsIfAny() : List.of(spot);
    if (items.isEmpty()) {
      spot.report(LOADS);
      draft.fail();
    }
    List<String> names = new ArrayList<>();
    for (Spot item : items) {
      Optional<String> name = item.text(LOADS);
      boolean given =
          name.filter(one -> new GivenLoads(numbers.reading()).has(one, item)).isPresent();
      names.add(draft.orFail(name.filter(one -> given), ""));
    }
    return names;
  }
}
