package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Tally;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Asks a figure at places of a tolerance box, and counts where it has no number. */
final class BoxLook {

  private final Model model;
  private final List<Uncertain> uncertain;
  private final List<Input> inputs;
  private final Figure figure;
  private final Tally missing = new Tally();
  private final Tally outcomes = new Tally();
  private final List<List<Double>> places = new ArrayList<>();
  private Dimension dimension = Dimension.NUMBER;

  BoxLook(Model model, List<Uncertain> uncertain, Figure figure) {
    this.model = model;
    this.uncertain = List.copyOf(uncertain);
    this.figure = figure;
    inputs = uncertain.stream().map(Uncertain::input).toList();
  }

  OptionalDouble at(double[] numbers) {
    List<Double> place = new ArrayList<>(numbers.length);
    for (double number : numbers) {
      place.add(number);
    }
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
