package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.study.Train;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code moving loads}: loads that go along members. */
final class MovingLoadsReader {

  private static final String EXAMPLE =
      "a moving load, such as {load: barrel, along: [heel, rest], asks: [heel.y]}";
  private static final String WHEELS =
      "wheels, the leading one first, such as [{force: 600 N}, {force: 300 N, behind: 1 m}]";

  private final StudyNumbers numbers;

  MovingLoadsReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  Optional<MovingPlan> read(Named named) {
    Optional<Fields> fields = named.value().fields(EXAMPLE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.MOVING_LOAD);
    Draft draft = new Draft(numbers.reading(), named.text(), named.name(), fields.get());
    String load = draft.text("load", "the name of a force or weight");
    List<String> along =
        draft.orFail(
            fields
                .get()
                .need("along", "two points or more, such as [heel, rest]")
                .flatMap(spot -> points(draft, spot)),
            List.<String>of());
    Optional<String> on = draft.textIfAny("on");
    Optional<String> loadCase = draft.textIfAny("case");
    List<Ask> asks =
        fields
            .get()
            .need("asks", "a list of asks such as [ram, heel.x]")
            .map(numbers::plainAsks)
            .orElse(List.of());
    Optional<Train> train = fields.get().find("train").flatMap(spot -> train(draft, spot));
    if (asks.isEmpty()) {
      fields
          .get()
          .find("asks")
          .filter(one -> one.isItems() && one.itemsIfAny().isEmpty())
          .ifPresent(one -> one.report("at least one ask"));
      return Optional.empty();
    }
    return draft
        .made(() -> new MovingPlan(named.text(), load, along, on, loadCase, asks, train))
        .flatMap(
            plan ->
                numbers.made(
                    fields.get().find("load").orElse(named.name()),
                    () -> {
                      numbers.file().ifPresent(plan::check);
                      return plan;
                    }));
  }

  private Optional<List<String>> points(Draft draft, Spot spot) {
    String wanted = "two points or more, such as [heel, rest]";
    Optional<List<Spot>> items = spot.items(wanted);
    if (items.filter(all -> all.size() < 2).isPresent()) {
      return spot.refuse(wanted);
    }
    return items.map(
        all ->
            all.stream()
                .map(
                    item ->
                        draft.orFail(
                            item.text("the name of a point").flatMap(name -> point(item, name)),
                            ""))
                .toList());
  }

  private Optional<String> point(Spot item, String name) {
    List<String> known =
        numbers
            .file()
            .map(file -> List.copyOf(file.model().device().points().keySet()))
            .orElse(List.of(name));
    return known.contains(name)
        ? Optional.of(name)
        : item.refuse(numbers.reading().problems().name("point", name, known));
  }

  private Optional<Train> train(Draft draft, Spot spot) {
    Optional<List<Spot>> items = spot.items(WHEELS);
    if (items.isEmpty()) {
      draft.fail();
      return Optional.empty();
    }
    List<Train.Wheel> wheels = new ArrayList<>();
    for (Spot item : items.get()) {
      Optional<Fields> fields = item.fields(WHEELS);
      if (fields.isEmpty()) {
        draft.fail();
        continue;
      }
      fields.get().only(FileKeys.WHEEL);
      Draft wheel = new Draft(numbers.reading(), draft.part(), item, fields.get());
      double force = wheel.amount("force", Dimension.FORCE);
      double behind = wheel.amount("behind", Dimension.LENGTH, 0);
      wheel.made(() -> wheels.add(new Train.Wheel(force + 0.0, behind + 0.0)));
      if (!wheel.isSound()) {
        draft.fail();
      }
    }
    Optional<Train> train =
        draft.isSound() ? numbers.made(spot, () -> new Train(wheels)) : Optional.empty();
    if (train.isEmpty()) {
      draft.fail();
    }
    return train;
  }
}
