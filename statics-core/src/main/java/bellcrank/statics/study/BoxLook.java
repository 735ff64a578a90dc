package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.BoxSearch;
import bellcrank.statics.study.internal.Tally;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Asks a figure at places of a tolerance box, and counts where it has no number. */
final class BoxLook implements BoxSearch.Function {

  private static final double[] NONE = {};

  private final Model model;
  private final List<Uncertain> uncertain;
  private final List<Input> inputs;
  private final Figure figure;
  private final Tally missing = new Tally();
  private final Tally outcomes = new Tally();
  private final List<List<Double>> places = new ArrayList<>();
  private Dimension dimension = Dimension.NUMBER;
  private boolean exact = true;
  private boolean first = true;

  BoxLook(Model model, List<Uncertain> uncertain, Figure figure) {
    this.model = model;
    this.uncertain = List.copyOf(uncertain);
    this.figure = figure;
    inputs = uncertain.stream().map(Uncertain::input).toList();
  }

  @Override
  public OptionalDouble at(double[] numbers) {
    List<Double> place = list(numbers);
    places.add(place);
    long look = places.size() - 1L;
    FigureAnswer answer = answer(place, look);
    if (answer instanceof FigureAnswer.Is is) {
      dimension = is.dimension();
    } else if (answer instanceof FigureAnswer.None none) {
      missing.add(none.reason().words() + ": " + none.why(), look);
    }
    return answer.number();
  }

  private FigureAnswer answer(List<Double> place, long look) {
    try {
      Standing standing = new Standing(Input.put(model, inputs, place));
      outcomes.add(standing.state(figure).words(), look);
      return standing.answer(figure);
    } catch (ModelException wrong) {
      String why = Standing.notBuilt(wrong);
      outcomes.add(why, look);
      return new FigureAnswer.None(FigureAnswer.Reason.NOT_DEFINED, why);
    }
  }

  private static List<Double> list(double[] numbers) {
    List<Double> place = new ArrayList<>(numbers.length);
    for (double number : numbers) {
      place.add(number);
    }
    return place;
  }

  /** Rates are looked for only where they are exact, which shows at the first place. */
  @Override
  public double[] rates(double[] numbers) {
    if (!exact) {
      return NONE;
    }
    double[] rates = new double[inputs.size()];
    List<Effect> effects = effects(list(numbers));
    if (effects.isEmpty()) {
      return NONE;
    }
    for (Effect effect : effects) {
      boolean differences =
          effect.how() == Effect.How.DIFFERENCES || effect.how() == Effect.How.NOT_FOUND;
      if (differences || !(effect.change() instanceof Effect.Change.Smooth smooth)) {
        exact &= !(differences && first);
        return NONE;
      }
      rates[inputs.indexOf(effect.input())] = smooth.rate();
    }
    first = false;
    return rates;
  }

  private List<Effect> effects(List<Double> place) {
    try {
      return Sensitivities.of(Input.put(model, inputs, place), figure, inputs).ranked();
    } catch (ModelException wrong) {
      // a force that is zero there has no direction, so that its size is no number of the model;
      // steps to places beside it still tell what it does
      return List.of();
    }
  }

  List<Uncertain> uncertain() {
    return uncertain;
  }

  Figure figure() {
    return figure;
  }

  Dimension dimension() {
    return dimension;
  }

  Tally missing() {
    return missing;
  }

  Tally outcomes() {
    return outcomes;
  }

  List<Double> place(long look) {
    return places.get((int) look);
  }
}
