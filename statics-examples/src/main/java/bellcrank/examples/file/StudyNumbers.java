package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.study.Figure;
import bellcrank.statics.study.Input;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads the numbers that a study may change, and the figures that it may ask for.
 *
 * @param reading what the readers of one file share
 * @param asks reads asks
 * @param file what the studies may be about; empty if the device could not be built
 * @param stated the file's driving and travel, whether or not the device could be built
 */
record StudyNumbers(
    Reading reading, AsksReader asks, Optional<FileParts> file, StatedDrives stated) {

  /**
   * What a file says of driving.
   *
   * @param driving the loads that grow
   * @param travel how the device is driven
   */
  record StatedDrives(Optional<Driving> driving, Optional<TravelPlan> travel) {}

  private static final int LONGEST = 1000;
  private static final String INPUT =
      "a number of the device, such as x of ram, size of hand or friction of heel";

  /** The number that a key names. */
  Optional<Input> input(Spot spot) {
    Optional<String> text = spot.text(INPUT);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (text.get().length() > LONGEST) {
      return spot.refuse(INPUT + ", of at most " + LONGEST + " characters");
    }
    return made(
        spot,
        () -> {
          Input input = Input.parse(text.get());
          file.ifPresent(known -> input.value(known.model()));
          return input;
        });
  }

  /** The value as the file states it; something in its place without a device. */
  double value(Input input) {
    return file.map(known -> input.value(known.model())).orElse(1.0);
  }

  /** A value of such a number, in SI units. */
  Optional<Double> amount(Spot spot, Input input) {
    return reading.values().ofKind(spot, input.dimension());
  }

  /** The figure that a text names. */
  Optional<Figure> figure(Spot spot) {
    Optional<String> text = spot.text("an ask such as heel.x");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String word = text.get();
    if (word.equals(FigureText.FAILURE) || word.equals(FigureText.STROKE)) {
      Optional<Figure> figure =
          FigureText.of(word, stated.driving().map(Driving::variation), stated.travel());
      boolean failure = word.equals(FigureText.FAILURE);
      return figure.isPresent()
          ? figure
          : spot.refuse(failure ? "a file with the key driving" : "a file with a drive and travel");
    }
    Optional<Figure> figure = asks.numberAsk(spot).map(Figure::of);
    return figure.flatMap(
        one ->
            made(
                spot,
                () -> {
                  file.ifPresent(known -> FigureText.check(one, known));
                  return one;
                }));
  }

  /** A list of figures. */
  List<Figure> figures(Spot spot) {
    List<Figure> figures = new ArrayList<>();
    spot.items("a list of asks such as [ram, heel.x]")
        .ifPresent(items -> items.forEach(item -> figure(item).ifPresent(figures::add)));
    return figures;
  }

  /** A list of asks that are sums of forces, in no case. */
  List<Ask> plainAsks(Spot spot) {
    List<Ask> all = new ArrayList<>();
    for (Spot item : spot.items("a list of asks such as [ram, heel.x]").orElse(List.of())) {
      Optional<Ask> ask = asks.numberAsk(item);
      if (ask.isPresent() && !TravelCheck.isNumber(ask.get())) {
        item.report("an ask for a number that balance gives, in no case");
      } else {
        ask.ifPresent(all::add);
      }
    }
    return all;
  }

  /** What kind of quantity a figure is. */
  Dimension dimension(Figure figure) {
    if (figure instanceof Figure.OfAsk one) {
      return AskDimension.of(one.ask(), reading.parts()).orElse(Dimension.NUMBER);
    }
    return figure instanceof Figure.FirstFailure
        ? Dimension.NUMBER
        : stated.travel().map(TravelPlan::dimension).orElse(Dimension.LENGTH);
  }

  /** What is made, unless that is complained about, which is then reported at a place. */
  <T> Optional<T> made(Spot spot, Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (ModelException e) {
      for (Problem problem : e.problems()) {
        spot.report(PartIndex.found(problem), problem.wanted());
      }
      return Optional.empty();
    }
  }
}
