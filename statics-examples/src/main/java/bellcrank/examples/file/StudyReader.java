package bellcrank.examples.file;

import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Happening;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads {@code study}: what is told about rough numbers. */
final class StudyReader {

  private static final String PARTS = "names of parts such as [heel, foot], or any";

  private final StudyNumbers numbers;
  private final List<Happening> chances = new ArrayList<>();

  StudyReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  Optional<StudyPlan> read(Spot spot) {
    Optional<Fields> read = spot.fields("what is asked, such as {asks: [ram], samples: 10000}");
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = read.get();
    fields.only(FileKeys.STUDY);
    Draft draft = new Draft(numbers.reading(), "study", spot, fields);
    List<Figure> figures =
        fields
            .need("asks", "a list of asks such as [ram, heel.x]")
            .map(numbers::figures)
            .orElse(List.of());
    int samples =
        fields
            .find("samples")
            .map(one -> draft.orFail(WholeNumber.read(one, 1, StudyPlan.MOST_SAMPLES), 1))
            .orElse(0);
    int seed = draft.wholeNumber("seed", 0, 1);
    fields.find("exceeds").ifPresent(one -> bounds(one, Happening::above));
    fields.find("falls below").ifPresent(one -> bounds(one, Happening::below));
    fields.find("slips").ifPresent(one -> parts(one, Happening::slips, Happening::slips));
    fields.find("tips").ifPresent(one -> parts(one, Happening::tips, Happening::tips));
    if (figures.isEmpty()) {
      fields
          .find("asks")
          .filter(one -> one.isItems() && one.itemsIfAny().isEmpty())
          .ifPresent(one -> one.report("at least one ask"));
      return Optional.empty();
    }
    return draft.made(() -> new StudyPlan(figures, samples, seed, chances));
  }

  private void bounds(Spot spot, BiFunction<Figure, Quantity, Happening> maker) {
    for (Named named :
        spot.fields("asks with their bounds, such as {ram: 2 kN}")
            .map(Fields::named)
            .orElse(List.of())) {
      Optional<Figure> figure = numbers.figure(named.name());
      if (figure.isPresent()) {
        var dimension = numbers.dimension(figure.get());
        numbers
            .reading()
            .values()
            .ofKind(named.value(), dimension)
            .ifPresent(si -> chances.add(maker.apply(figure.get(), new Quantity(si, dimension))));
      }
    }
  }

  private void parts(
      Spot spot, Supplier<Happening> anywhere, Function<String, Happening> somewhere) {
    if (spot.textIfAny().filter(StudyPlan.ANY::equals).isPresent()) {
      chances.add(anywhere.get());
      return;
    }
    List<Spot> items = spot.isItems() ? spot.itemsIfAny() : List.of(spot);
    if (items.isEmpty()) {
      spot.report(PARTS);
    }
    for (Spot item : items) {
      Optional<String> name = item.text(PARTS);
      if (name.isEmpty()) {
        continue;
      }
      List<String> known =
          numbers
              .file()
              .map(
                  file ->
                      file.model().device().connections().stream().map(one -> one.name()).toList())
              .orElse(List.of(name.get()));
      if (!known.contains(name.get()) || name.get().equals(StudyPlan.ANY)) {
        item.report(numbers.reading().problems().name("connection", name.get(), known));
      } else {
        chances.add(somewhere.apply(name.get()));
      }
    }
  }
}
