package bellcrank.examples.file;

import bellcrank.statics.study.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads what a file asks of numbers that can be otherwise, of cases and of moving loads. */
final class StudiesReader {

  private final StudyNumbers numbers;

  StudiesReader(StudyNumbers numbers) {
    this.numbers = numbers;
  }

  Studies read(Fields top) {
    List<Uncertain> rough = top.find("rough").map(new RoughReader(numbers)::read).orElse(List.of());
    Optional<StudyPlan> study = top.find("study").flatMap(new StudyReader(numbers)::read);
    if (top.has("rough") != top.has("study")) {
      top.need("rough", "numbers that are not known well, which the study is about");
      top.need("study", "what is asked of the rough numbers, such as {asks: [ram]}");
    }
    top.find("rough")
        .filter(Spot::isFields)
        .filter(spot -> spot.fields("numbers").filter(one -> one.named().isEmpty()).isPresent())
        .ifPresent(spot -> spot.report("at least one number"));
    top.find("rough").ifPresent(spot -> checkRough(spot, rough));
    List<SearchPlan> searches = all(top, "search", new SearchReader(numbers)::read);
    Optional<VariantsPlan> variants =
        top.find("variants").flatMap(new VariantsReader(numbers)::read);
    Optional<CombinationsPlan> combinations =
        top.find("combinations").flatMap(new CombinationsReader(numbers)::read);
    List<MovingPlan> moving = all(top, "moving loads", new MovingLoadsReader(numbers)::read);
    return numbers.reading().problems().none()
        ? new Studies(rough, study, searches, variants, combinations, moving)
        : Studies.NOTHING;
  }

  /** Problems of several numbers together are told where they begin. */
  private void checkRough(Spot spot, List<Uncertain> rough) {
    if (numbers.reading().problems().none()) {
      numbers.made(
          spot,
          () -> {
            numbers.file().ifPresent(file -> Studies.checkRough(rough, file));
            return rough;
          });
    }
  }

  private static <T> List<T> all(Fields top, String key, Function<Named, Optional<T>> reader) {
    List<T> all = new ArrayList<>();
    top.find(key)
        .flatMap(spot -> spot.fields("names with what they stand for"))
        .map(Fields::named)
        .orElse(List.of())
        .forEach(named -> reader.apply(named).ifPresent(all::add));
    return all;
  }
}
