package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Aim;
import bellcrank.statics.study.internal.Sight;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a search of dimensions sees from a place: the wanted figure, and the misses of all goals.
 */
final class SearchView {

  /** No more reasons than this are kept. */
  private static final int MOST_REASONS = 8;

  private final DimensionSearch search;
  private final DimensionSearch.Wanted wanted;
  private final double[] stated;
  private final Set<String> reasons = new LinkedHashSet<>();

  /** A bound of the wrong kind, which may show at some place only. */
  private Optional<ModelException> mistake = Optional.empty();

  SearchView(DimensionSearch search, DimensionSearch.Wanted wanted) {
    this.search = search;
    this.wanted = wanted;
    stated = new double[search.free().size()];
    for (int k = 0; k < stated.length; k++) {
      Free free = search.free().get(k);
      stated[k] = free.share(free.input().value(search.model()), free.input().dimension());
    }
  }

  DimensionSearch search() {
    return search;
  }

  DimensionSearch.Wanted wanted() {
    return wanted;
  }

  double[] stated() {
    return stated.clone();
  }

  Optional<ModelException> mistake() {
    return mistake;
  }

  List<String> reasons() {
    return List.copyOf(reasons);
  }

  /** Lets mistakes in what is asked show: here nothing is taken as a place without an answer. */
  void check(Model model) {
    Answers answers = new Answers(model);
    search.goals().forEach(answers::misses);
    wanted.figure().ifPresent(answers::of);
  }

  /** One for each bound. */
  List<Aim> aims() {
    List<Aim> aims = new ArrayList<>();
    for (Goal goal : search.goals()) {
      if (goal instanceof Goal.AtMost one) {
        aims.add(new Aim(false, Math.abs(one.bound().si())));
      } else if (goal instanceof Goal.AtLeast one) {
        aims.add(new Aim(false, Math.abs(one.bound().si())));
      } else if (goal instanceof Goal.Between one) {
        aims.add(new Aim(false, Math.abs(one.least().si())));
        aims.add(new Aim(false, Math.abs(one.greatest().si())));
      } else if (goal instanceof Goal.Equal one) {
        aims.add(new Aim(true, Math.abs(one.value().si())));
      } else {
        aims.add(new Aim(false, 1));
      }
    }
    return aims;
  }

  Sight look(double[] place) {
    try {
      Answers answers = new Answers(search.at(place));
      OptionalDouble value = value(answers, place);
      if (value.isEmpty()) {
        return Sight.nothing();
      }
      List<Double> misses = new ArrayList<>();
      for (Goal goal : search.goals()) {
        Optional<List<Double>> own = answers.misses(goal);
        if (own.isEmpty()) {
          return Sight.nothing();
        }
        misses.addAll(own.get());
      }
      return Sight.of(
          value.getAsDouble(), misses.stream().mapToDouble(Double::doubleValue).toArray());
    } catch (ModelException impossible) {
      note(String.valueOf(impossible.getMessage()));
      return Sight.nothing();
    }
  }

  /** What shall be least. */
  private OptionalDouble value(Answers answers, double[] place) {
    if (wanted.figure().isPresent()) {
      OptionalDouble number = answers.number(wanted.figure().get());
      return number.isPresent()
          ? OptionalDouble.of(wanted.sense() * number.getAsDouble())
          : OptionalDouble.empty();
    }
    if (wanted.number() >= 0) {
      return OptionalDouble.of(wanted.sense() * place[wanted.number()]);
    }
    double square = 0;
    for (int k = 0; k < place.length; k++) {
      square += (place[k] - stated[k]) * (place[k] - stated[k]);
    }
    return OptionalDouble.of(square);
  }

  private void note(String reason) {
    if (reasons.size() < MOST_REASONS) {
      reasons.add(reason);
    }
  }

  Answers answers(Model model) {
    return new Answers(model);
  }

  /** The answers of one model, each found once. */
  final class Answers {

    private final Model model;
    private final Map<Figure, FigureAnswer> known = new HashMap<>();

    private Answers(Model model) {
      this.model = model;
    }

    FigureAnswer of(Figure figure) {
      FigureAnswer answer = known.get(figure);
      if (answer == null) {
        answer = figure.of(model);
        known.put(figure, answer);
      }
      return answer;
    }

    /** The number, or what counts for it; empty, and noted, if there is none. */
    OptionalDouble number(Figure figure) {
      FigureAnswer answer = of(figure);
      if (answer.isUnlimited()) {
        return OptionalDouble.of(Sight.ENDLESS);
      }
      if (answer instanceof FigureAnswer.None none) {
        note(figure.text() + ": " + none.why());
      }
      return answer.number();
    }

    /** By how much a goal is missed, for each of its bounds; empty if that is not known. */
    Optional<List<Double>> misses(Goal goal) {
      if (goal instanceof Goal.AtMost one) {
        return miss(one.figure(), one.bound()).map(List::of);
      }
      if (goal instanceof Goal.AtLeast one) {
        return miss(one.figure(), one.bound()).map(miss -> List.of(-miss));
      }
      if (goal instanceof Goal.Between one) {
        Optional<Double> low = miss(one.figure(), one.least());
        Optional<Double> high = miss(one.figure(), one.greatest());
        return low.isPresent() && high.isPresent()
            ? Optional.of(List.of(-low.get(), high.get()))
            : Optional.empty();
      }
      if (goal instanceof Goal.Equal one) {
        return miss(one.figure(), one.value()).map(miss -> List.of(turned(miss, one.value())));
      }
      Optional<String> loadCase = ((Goal.Stands) goal).loadCase();
      OptionalDouble miss =
          new Shortfall(
                  model,
                  loadCase
                      .map(model.device()::loadCase)
                      .orElseGet(() -> model.device().cases().get(0)))
              .miss();
      if (miss.isEmpty()) {
        note(goal.text() + ": not decided");
        return Optional.empty();
      }
      return Optional.of(List.of(miss.getAsDouble()));
    }

    private static double turned(double miss, Quantity value) {
      return value.dimension() == Dimension.ANGLE ? Math.IEEEremainder(miss, 2 * Math.PI) : miss;
    }

    /** How far a figure is above a bound. */
    private Optional<Double> miss(Figure figure, Quantity bound) {
      if (of(figure) instanceof FigureAnswer.Is is && is.dimension() != bound.dimension()) {
        ModelException wrong =
            new ModelException(
                figure.text(),
                "bound",
                bound.format(bound.dimension().si(), 6),
                is.dimension().noun() + ", as the figure is");
        mistake = Optional.of(wrong);
        throw wrong;
      }
      OptionalDouble number = number(figure);
      return number.isPresent() ? Optional.of(number.getAsDouble() - bound.si()) : Optional.empty();
    }
  }
}
