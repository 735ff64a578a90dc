package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Best;
import bellcrank.statics.study.internal.GoalSearch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Searches numbers of a model within bounds so that goals hold, and so that a figure, or one of the
 * numbers, is least or greatest. Immutable.
 *
 * <p>One number is looked at on a grid of 240 steps, and between its places wherever something
 * changes; what lies wholly between two places can be missed. Several numbers are surveyed all over
 * their bounds and searched from several beginnings, so the best of several hollows is found as a
 * rule, not for certain. Goals that stop a number are met to about 1e-9; a number that nothing
 * stops is found to about 1e-5 of its range, since its figure hardly changes there. The same search
 * always comes out the same.
 *
 * <p>Figures are those of the model as drawn. Where there is no balance, or a device cannot be
 * built, all goals are missed.
 */
public final class DimensionSearch {

  /** How often a search looks at most, unless it is told otherwise. */
  public static final int MOST_LOOKS = 20_000;

  private final Model model;
  private final List<Free> free;
  private final List<Goal> goals;
  private final int most;

  private DimensionSearch(Model model, List<Free> free, List<Goal> goals, int most) {
    this.model = model;
    this.free = List.copyOf(free);
    this.goals = List.copyOf(goals);
    this.most = most;
  }

  /**
   * A search.
   *
   * @param model the model, with its numbers as stated
   * @param free the numbers that it may choose, at least one
   * @param goals what shall hold; may be empty
   * @return the search
   * @throws ModelException if no number is free, or more than can be searched at once, one is free
   *     twice, a number changes one that is listed before it, the model has no such number, or it
   *     lacks what a goal names
   */
  public static DimensionSearch of(Model model, List<Free> free, List<Goal> goals) {
    if (free.isEmpty() || free.size() > GoalSearch.mostNumbers()) {
      throw new ModelException(
          "search", "free numbers", free.size(), "1 to " + GoalSearch.mostNumbers());
    }
    HashSet<Input> inputs = new HashSet<>();
    for (Free one : free) {
      one.input().value(model);
      if (!inputs.add(one.input())) {
        throw new ModelException(
            one.input().text(), "free", "twice", "each number once, with one pair of bounds");
      }
    }
    List<Double> within = new ArrayList<>();
    free.forEach(one -> within.add(one.at(Putting.share(within.size()))));
    Optional<ModelException> clash =
        Putting.clash(model, free.stream().map(Free::input).toList(), within);
    if (clash.isPresent()) {
      throw clash.get();
    }
    DimensionSearch search = new DimensionSearch(model, free, goals, MOST_LOOKS);
    // what a goal names that is not there is a mistake; what has no answer as stated is none
    new SearchView(search, Wanted.NOTHING).check(model);
    return search;
  }

  /**
   * The same search with another bound on its effort.
   *
   * @param looks how often it may look, 1 or more
   * @return the search
   * @throws ModelException if the number is below 1
   */
  public DimensionSearch withMost(int looks) {
    if (looks < 1) {
      throw new ModelException("search", "looks", looks, "1 or more");
    }
    return new DimensionSearch(model, free, goals, looks);
  }

  /**
   * Searches where a figure is least.
   *
   * @param figure what shall be least
   * @return what was found
   * @throws ModelException if a bound of a goal is of another kind than its figure, or the model
   *     lacks what the figure names
   */
  public SearchAnswer least(Figure figure) {
    return search(Wanted.of(figure, 1));
  }

  /**
   * Searches the least value of one of the free numbers with which all goals hold.
   *
   * @param input one of the free numbers
   * @return what was found
   * @throws ModelException if the number is not free, or a bound of a goal is of another kind than
   *     its figure
   */
  public SearchAnswer least(Input input) {
    return search(Wanted.of(number(input), 1));
  }

  /**
   * Searches where a figure is greatest.
   *
   * @param figure what shall be greatest
   * @return what was found
   * @throws ModelException if a bound of a goal is of another kind than its figure, or the model
   *     lacks what the figure names
   */
  public SearchAnswer greatest(Figure figure) {
    return search(Wanted.of(figure, -1));
  }

  /**
   * Searches the greatest value of one of the free numbers with which all goals hold.
   *
   * @param input one of the free numbers
   * @return what was found
   * @throws ModelException if the number is not free, or a bound of a goal is of another kind than
   *     its figure
   */
  public SearchAnswer greatest(Input input) {
    return search(Wanted.of(number(input), -1));
  }

  private int number(Input input) {
    for (int k = 0; k < free.size(); k++) {
      if (free.get(k).input().equals(input)) {
        return k;
      }
    }
    List<String> names = free.stream().map(one -> one.input().text()).toList();
    throw new ModelException(
        "search", "wanted number", input.text(), "a free one: " + String.join(", ", names));
  }

  /**
   * Searches any numbers with which all goals hold: those nearest to the stated ones, each measured
   * by the width of its bounds.
   *
   * @return what was found
   * @throws ModelException if a bound of a goal is of another kind than its figure
   */
  public SearchAnswer anyThat() {
    return search(Wanted.NOTHING);
  }

  private SearchAnswer search(Wanted wanted) {
    SearchView view = new SearchView(this, wanted);
    view.check(model);
    Best best = GoalSearch.of(view::look, view.aims(), view.stated(), most);
    if (view.mistake().isPresent()) {
      throw view.mistake().get();
    }
    if (!best.isThere()) {
      return new SearchAnswer.NoAnswer(view.reasons(), best.looks(), best.isCutShort());
    }
    return new SearchReport(view, best).answer();
  }

  /**
   * What shall be least.
   *
   * @param figure a figure, or
   * @param number a free number by its place in the list, else −1; without either the distance from
   *     the stated numbers
   * @param sense 1, or −1 for what shall be greatest
   */
  record Wanted(Optional<Figure> figure, int number, int sense) {
    static final Wanted NOTHING = new Wanted(Optional.empty(), -1, 1);

    static Wanted of(Figure figure, int sense) {
      return new Wanted(Optional.of(figure), -1, sense);
    }

    static Wanted of(int number, int sense) {
      return new Wanted(Optional.empty(), number, sense);
    }
  }

  Model model() {
    return model;
  }

  List<Free> free() {
    return free;
  }

  List<Goal> goals() {
    return goals;
  }

  /** The model with the free numbers at shares of their ranges. */
  Model at(double[] place) {
    List<Input> inputs = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (int k = 0; k < place.length; k++) {
      inputs.add(free.get(k).input());
      values.add(free.get(k).at(place[k]));
    }
    return Input.put(model, inputs, values);
  }
}
