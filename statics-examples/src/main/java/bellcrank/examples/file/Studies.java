package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Sampling;
import bellcrank.statics.study.Uncertain;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a file asks of numbers that can be otherwise, of cases and of moving loads.
 *
 * @param rough numbers that are not known well, each once
 * @param study what is told about them; there if and only if there are some
 * @param searches searches for numbers with which goals hold, one at most of each name
 * @param variants variants that are compared
 * @param combinations cases made of groups of loads
 * @param moving loads that go along members, one at most of each name
 */
public record Studies(
    List<Uncertain> rough,
    Optional<StudyPlan> study,
    List<SearchPlan> searches,
    Optional<VariantsPlan> variants,
    Optional<CombinationsPlan> combinations,
    List<MovingPlan> moving) {

  /** Nothing is studied. */
  public static final Studies NOTHING =
      new Studies(
          List.of(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of());

  /**
   * Copies the lists.
   *
   * @param rough numbers that are not known well
   * @param study what is told about them
   * @param searches searches for numbers with which goals hold
   * @param variants variants that are compared
   * @param combinations cases made of groups of loads
   * @param moving loads that go along members
   * @throws ModelException if a number or name is there twice, or rough numbers and the study of
   *     them are not both there
   */
  public Studies {
    rough = List.copyOf(rough);
    searches = List.copyOf(searches);
    moving = List.copyOf(moving);
    if (rough.isEmpty() == study.isPresent()) {
      throw new ModelException(
          "study",
          "rough",
          rough.isEmpty() ? "none" : "numbers alone",
          "both rough numbers and what is asked of them");
    }
    Set<Input> inputs = new HashSet<>();
    for (Uncertain one : rough) {
      if (!inputs.add(one.input())) {
        throw new ModelException("rough", "number", '"' + one.input().text() + '"', "each once");
      }
    }
    once("search", searches.stream().map(SearchPlan::name).toList());
    once("moving loads", moving.stream().map(MovingPlan::name).toList());
  }

  private static void once(String key, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new ModelException(key, "name", name, "each name once");
      }
    }
  }

  /**
   * Whether nothing is studied.
   *
   * @return true if so
   */
  public boolean isEmpty() {
    return equals(NOTHING);
  }

  /** Checks that a file has what is studied. */
  void check(FileParts file) {
    checkRough(rough, file);
    if (study.isPresent()) {
      study.get().figures().forEach(one -> FigureText.check(one, file));
      study.get().chances().forEach(one -> check(one, file));
    }
    searches.forEach(one -> one.check(file));
    variants.ifPresent(one -> one.check(file));
    combinations.ifPresent(one -> one.check(file));
    moving.forEach(one -> one.check(file));
  }

  /** Checks that a file has its rough numbers, and that none changes another. */
  static void checkRough(List<Uncertain> rough, FileParts file) {
    if (!rough.isEmpty()) {
      Sampling.of(file.model(), rough, List.of());
    }
  }

  private static void check(Happening one, FileParts file) {
    if (one instanceof Happening.Above above) {
      FigureText.check(above.figure(), file);
    } else if (one instanceof Happening.Below below) {
      FigureText.check(below.figure(), file);
    }
    Optional<String> part = StudyPlan.Chance.part(one);
    if (part.isPresent() && file.model().device().connection(part.get()).isEmpty()) {
      List<String> names =
          file.model().device().connections().stream().map(Connection::name).toList();
      throw new ModelException(
          "study",
          StudyPlan.Chance.of(one).key(),
          '"' + part.get() + '"',
          "the name of a connection: " + String.join(", ", names));
    }
    if (part.equals(Optional.of(StudyPlan.ANY))) {
      throw new ModelException("study", "part", StudyPlan.ANY, "a part of another name");
    }
  }
}
