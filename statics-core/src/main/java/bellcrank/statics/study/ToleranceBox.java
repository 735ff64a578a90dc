package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.BoxSearch;
import bellcrank.statics.study.internal.Tally;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The worst case in a tolerance box: the least and the greatest value of a figure when each
 * uncertain number may be anywhere between its bounds, whatever the others are. Immutable.
 *
 * <p>{@link How} says how far that can be relied on. It is found by looking, not proved: a figure
 * that turns between all the places looked at is not noticed.
 */
public final class ToleranceBox {

  /** Places are looked at up to this many times unless another bound is stated. */
  public static final int LOOKS = BoxSearch.LOOKS;

  private static final int FEWEST = 100;

  private final List<Uncertain> uncertain;
  private final Figure figure;
  private final FigureAnswer stated;
  private final How how;
  private final List<Sense> senses;
  private final int looks;
  private final int exactPlaces;
  private final int otherPlaces;
  private final List<FigureAt> ends;
  private final List<Counted> missing;
  private final List<Counted> outcomes;

  /** How the ends were found. */
  public enum How {
    /**
     * Each number, wherever looked at, only raises or only lowers the figure, so the ends lie at
     * the two corners to which that points, and are exact there.
     */
    MONOTONE,
    /**
     * A search from several starts, bounded by a number of looks: what it found is met, but there
     * may be something worse.
     */
    BOUNDED_SEARCH,
    /** The figure has a number nowhere. */
    NOTHING_FOUND
  }

  /** What a number does to the figure, wherever looked at. */
  public enum Sense {
    /** The figure rises with it. */
    RISES,
    /** The figure falls with it. */
    FALLS,
    /** It does both, here and there. */
    BOTH,
    /** It has no effect. */
    NONE
  }

  private ToleranceBox(BoxLook look, FigureAnswer stated, BoxSearch found) {
    uncertain = look.uncertain();
    figure = look.figure();
    this.stated = stated;
    looks = found.looks();
    exactPlaces = found.exactPlaces();
    otherPlaces = found.otherPlaces();
    ends = ends(look, found);
    how =
        ends.isEmpty()
            ? How.NOTHING_FOUND
            : found.isMonotoneThroughout() ? How.MONOTONE : How.BOUNDED_SEARCH;
    List<Sense> all = new ArrayList<>();
    for (int k = 0; k < uncertain.size(); k++) {
      int sense = found.sense(k);
      all.add(
          sense > 0
              ? Sense.RISES
              : sense < 0 ? Sense.FALLS : found.matters(k) ? Sense.BOTH : Sense.NONE);
    }
    senses = List.copyOf(all);
    missing = counted(look, look.missing());
    outcomes = counted(look, look.outcomes());
  }

  private static List<FigureAt> ends(BoxLook look, BoxSearch found) {
    List<FigureAt> both = new ArrayList<>();
    for (boolean greatest : new boolean[] {false, true}) {
      double[] end = found.end(greatest);
      if (end.length > 0) {
        List<Double> inputs = new ArrayList<>();
        for (int k = 0; k < end.length - 1; k++) {
          inputs.add(end[k]);
        }
        both.add(new FigureAt(end[end.length - 1], look.dimension(), inputs));
      }
    }
    return List.copyOf(both);
  }

  private static List<Counted> counted(BoxLook look, Tally tally) {
    return tally.entries().stream()
        .map(one -> new Counted(one.name(), one.count(), look.place(one.first())))
        .toList();
  }

  /**
   * Looks for the worst case.
   *
   * @param model the model
   * @param uncertain its uncertain numbers with bounds, at least one, each once
   * @param figure what is wanted
   * @return its least and greatest value
   * @throws ModelException naming the input, if there is none, one is there twice, has no bounds,
   *     changes another, or the model does not have it; or if the figure names what the model does
   *     not have
   */
  public static ToleranceBox of(Model model, List<Uncertain> uncertain, Figure figure) {
    return of(model, uncertain, figure, LOOKS);
  }

  /**
   * Looks for the worst case with a stated effort.
   *
   * @param model the model
   * @param uncertain its uncertain numbers with bounds, at least one, each once
   * @param figure what is wanted
   * @param looks how often the figure may be asked at most, 100 or more
   * @return its least and greatest value
   * @throws ModelException naming the input, if there is none, one is there twice, has no bounds,
   *     changes another, or the model does not have it; or if the figure names what the model does
   *     not have, or there are too few looks
   */
  public static ToleranceBox of(Model model, List<Uncertain> uncertain, Figure figure, int looks) {
    UncertainCheck.check(model, uncertain);
    if (looks < FEWEST) {
      throw new ModelException(figure.text(), "looks", looks, FEWEST + " or more");
    }
    FigureAnswer stated = figure.of(model);
    double[] low = new double[uncertain.size()];
    double[] high = new double[uncertain.size()];
    double[] middle = new double[uncertain.size()];
    for (int k = 0; k < uncertain.size(); k++) {
      Uncertain one = uncertain.get(k);
      if (one.spread() instanceof Spread.Normal) {
        throw new ModelException(
            one.input().text(),
            "spread",
            "a normal distribution",
            "bounds: a normal distribution has none");
      }
      low[k] = one.least(model);
      high[k] = one.greatest(model);
      middle[k] = one.input().value(model);
    }
    BoxLook look = new BoxLook(model, uncertain, figure);
    return new ToleranceBox(look, stated, BoxSearch.of(low, high, middle, looks, look));
  }

  /**
   * The uncertain numbers.
   *
   * @return in the order in which their values are told
   */
  public List<Uncertain> uncertain() {
    return uncertain;
  }

  /**
   * The figure.
   *
   * @return as it was asked
   */
  public Figure figure() {
    return figure;
  }

  /**
   * What it comes to with all numbers as the model states them.
   *
   * @return the number, or why there is none
   */
  public FigureAnswer stated() {
    return stated;
  }

  /**
   * How the ends were found.
   *
   * @return exact at corners, or by a search
   */
  public How how() {
    return how;
  }

  /**
   * What each number does to the figure, wherever looked at.
   *
   * @return in the order of the uncertain numbers
   */
  public List<Sense> senses() {
    return senses;
  }

  /**
   * How often the figure was asked.
   *
   * @return 1 or more
   */
  public int looks() {
    return looks;
  }

  /**
   * At how many places the senses are those of exact rates.
   *
   * @return 0 or more
   */
  public int exactPlaces() {
    return exactPlaces;
  }

  /**
   * At how many places the senses were seen by steps of a sixteenth of the box.
   *
   * @return 0 or more
   */
  public int otherPlaces() {
    return otherPlaces;
  }

  /**
   * The least value.
   *
   * @return with the numbers there; empty if the figure has a number nowhere
   */
  public Optional<FigureAt> least() {
    return ends.stream().findFirst();
  }

  /**
   * The greatest value.
   *
   * @return with the numbers there; empty if the figure has a number nowhere
   */
  public Optional<FigureAt> greatest() {
    return ends.stream().skip(1).findFirst();
  }

  /**
   * Where the figure has no number. Next to such places it may grow without bound.
   *
   * @return reasons with counts of looks and an example; empty if it had one wherever looked at
   */
  public List<Counted> missing() {
    return missing;
  }

  /**
   * How the device stood wherever looked at. Where it does not hold, its forces are those that a
   * balance would need.
   *
   * @return verdicts with counts of looks and an example
   */
  public List<Counted> outcomes() {
    return outcomes;
  }

  /**
   * All of it in plain sentences.
   *
   * @param units units of all values
   * @return sentences with their full stops
   */
  public List<String> words(UnitSystem units) {
    return BoxWords.of(this, units);
  }

  /** Kind of quantity of the ends. */
  Dimension dimension() {
    return ends.isEmpty() ? Dimension.NUMBER : ends.get(0).dimension();
  }
}
