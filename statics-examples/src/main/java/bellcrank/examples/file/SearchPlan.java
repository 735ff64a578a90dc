package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.DimensionSearch;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Free;
import bellcrank.statics.study.Goal;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.SearchAnswer;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A search for numbers of the device with which goals hold.
 *
 * @param name name of the search
 * @param free the numbers that may change, with their bounds; at least one
 * @param aim what shall be least or greatest; without it the nearest numbers that will do are
 *     wanted
 * @param goals what shall hold, at most one goal for each figure; goals that the device stands last
 * @param expected what the file expects to be found
 */
public record SearchPlan(
    String name, List<Free> free, Optional<Aim> aim, List<Goal> goals, Optional<Values> expected) {

  /**
   * Copies the lists and checks what a file can say.
   *
   * @param name name of the search
   * @param free the numbers that may change
   * @param aim what shall be least or greatest
   * @param goals what shall hold
   * @param expected what the file expects to be found
   * @throws ModelException if there is neither aim nor goal, two goals are about one figure, or
   *     what is expected does not belong to the search
   */
  public SearchPlan {
    Ask.of(name);
    free = List.copyOf(free);
    goals = List.copyOf(goals);
    if (aim.isEmpty() && goals.isEmpty()) {
      throw new ModelException(name, "goals", "none", "a goal, or what shall be least or greatest");
    }
    Set<String> seen = new HashSet<>();
    boolean standing = false;
    for (Goal goal : goals) {
      boolean stands = goal instanceof Goal.Stands;
      if (standing && !stands) {
        throw new ModelException(name, "goals", goal.text(), "goals that it stands behind others");
      }
      standing = stands;
      if (!seen.add(about(goal))) {
        throw new ModelException(name, "goals", goal.text(), "one goal for each figure");
      }
    }
    if (expected.isPresent()) {
      checkExpected(name, free, aim, expected.get());
    }
  }

  private static void checkExpected(
      String name, List<Free> free, Optional<Aim> aim, Values expected) {
    for (Input input : expected.values().keySet()) {
      if (free.stream().noneMatch(one -> one.input().equals(input))) {
        throw new ModelException(
            name, "expect", '"' + input.text() + '"', "one of the numbers that change");
      }
    }
    if (expected.reaches().isPresent() && aim.flatMap(Aim::figure).isEmpty()) {
      throw new ModelException(
          name, "reaches", "a value", "none, since no figure shall be least or greatest");
    }
  }

  /** What a goal is about. */
  static String about(Goal goal) {
    if (goal instanceof Goal.Stands stands) {
      return "stands " + stands.loadCase().orElse("");
    }
    return "figure " + FigureText.of(figure(goal).orElseThrow());
  }

  /** The figure of a goal, if it has one. */
  static Optional<Figure> figure(Goal goal) {
    if (goal instanceof Goal.AtMost one) {
      return Optional.of(one.figure());
    }
    if (goal instanceof Goal.AtLeast one) {
      return Optional.of(one.figure());
    }
    if (goal instanceof Goal.Between one) {
      return Optional.of(one.figure());
    }
    return goal instanceof Goal.Equal one ? Optional.of(one.figure()) : Optional.empty();
  }

  /**
   * What shall be least or greatest: a figure or one of the numbers that change.
   *
   * @param greatest whether it shall be greatest
   * @param figure the figure
   * @param input the number, if it is no figure
   */
  public record Aim(boolean greatest, Optional<Figure> figure, Optional<Input> input) {

    /**
     * Checks that it is one of the two.
     *
     * @param greatest whether it shall be greatest
     * @param figure the figure
     * @param input the number
     * @throws ModelException if it is both or neither
     */
    public Aim {
      if (figure.isPresent() == input.isPresent()) {
        throw new ModelException("search", "aim", "both or neither", "a figure or a number");
      }
    }

    /** Its key in a file. */
    String key() {
      return greatest ? "greatest" : "least";
    }

    /** Its text in a file. */
    String text() {
      return figure.map(FigureText::of).or(() -> input.map(Input::text)).orElse("");
    }
  }

  /**
   * What a file expects a search to find.
   *
   * @param values values of some numbers that change; empty if no numbers will do
   * @param reaches what the least or greatest figure comes to
   * @param digits significant digits to which they must hold, in their own units, 1 to 15; 0 if
   *     nothing should be found
   * @param source where they come from
   */
  public record Values(
      Map<Input, Expected.Amount> values,
      Optional<Expected.Amount> reaches,
      int digits,
      Optional<String> source) {

    /**
     * Copies the map and checks the digits.
     *
     * @param values values of some numbers that change
     * @param reaches what the least or greatest figure comes to
     * @param digits significant digits to which they must hold
     * @param source where they come from
     * @throws ModelException if the digits are out of range, or a figure is expected where no
     *     numbers will do
     */
    public Values {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
      source = FreeText.check("source", source);
      boolean none = values.isEmpty();
      if (none ? digits != 0 : digits < 1 || digits > Expectation.MOST_DIGITS) {
        throw new ModelException(
            "search", "digits", digits, none ? "no digits, since there are no values" : "1 to 15");
      }
      if (none && reaches.isPresent()) {
        throw new ModelException("search", "reaches", "a value", "none, since nothing is found");
      }
    }
  }

  /** Checks that a file can be searched so. */
  void check(FileParts file) {
    aim.flatMap(Aim::figure).ifPresent(one -> FigureText.check(one, file));
    for (Goal goal : goals) {
      figure(goal).ifPresent(one -> FigureText.check(one, file));
      if (goal instanceof Goal.Stands stands) {
        stands.loadCase().ifPresent(file.model().device()::loadCase);
      }
    }
    Optional<Input> input = aim.flatMap(Aim::input);
    if (input.isPresent() && free.stream().noneMatch(one -> one.input().equals(input.get()))) {
      throw new ModelException(
          name, aim.orElseThrow().key(), input.get().text(), "one of the numbers that change");
    }
    DimensionSearch.of(file.model(), free, goals);
  }

  /**
   * Searches.
   *
   * @param model the device with its ground and sizing
   * @return what is found
   */
  public SearchAnswer search(Model model) {
    DimensionSearch search = DimensionSearch.of(model, free, goals);
    if (aim.isEmpty()) {
      return search.anyThat();
    }
    Aim wanted = aim.get();
    if (wanted.figure().isPresent()) {
      return wanted.greatest()
          ? search.greatest(wanted.figure().get())
          : search.least(wanted.figure().get());
    }
    Input input = wanted.input().orElseThrow();
    return wanted.greatest() ? search.greatest(input) : search.least(input);
  }
}
