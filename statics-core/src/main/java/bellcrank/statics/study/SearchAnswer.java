package bellcrank.statics.study;

import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a search of dimensions found. */
public sealed interface SearchAnswer {

  /**
   * How often the search looked at the model.
   *
   * @return 1 or more
   */
  int looks();

  /**
   * Whether it ended because it had looked as often as it may, so that more looks might find more.
   *
   * @return true if so
   */
  boolean isCutShort();

  /**
   * Numbers with which all goals hold.
   *
   * @param settings the free numbers
   * @param model the model with them
   * @param wanted the figure that is least or greatest there; empty if none was wanted
   * @param goals all goals, each kept
   * @param looks how often the search looked
   * @param isCutShort whether it had looked as often as it may
   */
  record Found(
      List<Setting> settings,
      Model model,
      Optional<Reading> wanted,
      List<Outcome> goals,
      int looks,
      boolean isCutShort)
      implements SearchAnswer {

    /**
     * Copies the lists.
     *
     * @param settings the free numbers
     * @param model the model with them
     * @param wanted the figure that is least or greatest there
     * @param goals all goals, each kept
     * @param looks how often the search looked
     * @param isCutShort whether it had looked as often as it may
     */
    public Found {
      settings = List.copyOf(settings);
      goals = List.copyOf(goals);
    }

    /**
     * What has no room: goals that are just kept and numbers at a bound. Where a figure was wanted,
     * this is what stops it from going further.
     *
     * @return clauses; empty if nothing stops it, so that the figure turns there
     */
    public List<String> stops() {
      List<String> stops = new ArrayList<>();
      for (Outcome outcome : goals) {
        if (outcome.isUsedUp()) {
          stops.add(outcome.goal().text());
        }
      }
      for (Setting setting : settings) {
        setting.words().ifPresent(stops::add);
      }
      return List.copyOf(stops);
    }
  }

  /**
   * No numbers were found with which all goals hold.
   *
   * @param settings the free numbers of the nearest miss: the least sum of what goals are missed
   *     by, each measured by its bound or by how much the figure differs within the bounds
   * @param model the model with them
   * @param goals all goals, with what they are missed by
   * @param looks how often the search looked
   * @param isCutShort whether it had looked as often as it may
   */
  record Infeasible(
      List<Setting> settings, Model model, List<Outcome> goals, int looks, boolean isCutShort)
      implements SearchAnswer {

    /**
     * Copies the lists.
     *
     * @param settings the free numbers of the nearest miss
     * @param model the model with them
     * @param goals all goals, with what they are missed by
     * @param looks how often the search looked
     * @param isCutShort whether it had looked as often as it may
     */
    public Infeasible {
      settings = List.copyOf(settings);
      goals = List.copyOf(goals);
    }

    /**
     * The goals that are missed.
     *
     * @return at least one
     */
    public List<Outcome> missed() {
      return goals.stream().filter(one -> !one.isKept()).toList();
    }
  }

  /**
   * At no place that was looked at there was an answer to everything that was asked.
   *
   * @param reasons why not, each told once, the first few
   * @param looks how often the search looked
   * @param isCutShort whether it had looked as often as it may
   */
  record NoAnswer(List<String> reasons, int looks, boolean isCutShort) implements SearchAnswer {

    /**
     * Copies the list.
     *
     * @param reasons why not
     * @param looks how often the search looked
     * @param isCutShort whether it had looked as often as it may
     */
    public NoAnswer {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * A free number as the search set it.
   *
   * @param free the number with its bounds
   * @param value its value in SI units
   * @param stop at which bound it stands, if at one
   */
  record Setting(Free free, double value, Stop stop) {

    /**
     * At which bound it stands, in words.
     *
     * @return a clause; empty if at none
     */
    public Optional<String> words() {
      return stop == Stop.NONE
          ? Optional.empty()
          : Optional.of(free.input().text() + " at its " + stop.word() + " value");
    }

    /**
     * The value with its unit.
     *
     * @return the value as a quantity
     */
    public Quantity quantity() {
      return new Quantity(value, free.input().dimension());
    }
  }

  /** At which bound a number stands. */
  enum Stop {
    /** Between its bounds. */
    NONE("own"),
    /** At the lower one. */
    LEAST("least"),
    /** At the upper one. */
    GREATEST("greatest");

    private final String word;

    Stop(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * A figure and what it comes to.
   *
   * @param figure the figure
   * @param answer its number; a figure that has no limit may be wanted and found as well
   */
  record Reading(Figure figure, FigureAnswer answer) {}

  /**
   * How a goal comes out.
   *
   * @param goal the goal
   * @param answer what its figure comes to; empty where the goal is that the device stands
   * @param missedBy by how much it is missed, in SI units, 0 if it is kept and infinite if there is
   *     no end to the figure; of a device that does not stand the share of its applied loads, or of
   *     its friction, that is too much or lacking, 1 where neither tells
   * @param isUsedUp whether it has no room, so that it may stop the search
   */
  record Outcome(Goal goal, Optional<FigureAnswer> answer, double missedBy, boolean isUsedUp) {

    /**
     * Whether the goal is kept.
     *
     * @return true if it is missed by nothing
     */
    public boolean isKept() {
      return missedBy == 0;
    }
  }
}
