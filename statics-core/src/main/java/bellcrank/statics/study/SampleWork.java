package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.Standing.Kind;
import bellcrank.statics.study.Standing.State;
import bellcrank.statics.study.internal.Draws;
import bellcrank.statics.study.internal.Sheet;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Builds and asks the samples of a block; for one thread. */
final class SampleWork {

  private final Sampling sampling;
  private final SampleDraw draw;
  private final List<Input> inputs;
  private final List<Figure> figures;
  private final List<Happening> happenings;

  SampleWork(Sampling sampling, SampleDraw draw) {
    this.sampling = sampling;
    this.draw = draw;
    inputs = sampling.uncertain().stream().map(Uncertain::input).toList();
    figures = sampling.figures();
    happenings = sampling.happenings();
  }

  Sheet of(long first, int count) {
    Sheet sheet = new Sheet(count, figures.size(), happenings.size());
    Draws draws = draw.block(first);
    for (long sample = first; sample < first + count; sample++) {
      look(draw.next(draws), sample, sheet);
    }
    return sheet;
  }

  private void look(List<Double> values, long sample, Sheet sheet) {
    Model model;
    try {
      model = Input.put(sampling.model(), inputs, values);
    } catch (ModelException wrong) {
      String why = Standing.notBuilt(wrong);
      sheet.outcome(why, sample);
      for (int k = 0; k < figures.size(); k++) {
        sheet.noValue(k, why, sample);
      }
      for (int k = 0; k < happenings.size(); k++) {
        sheet.leavesOpen(k);
      }
      return;
    }
    Standing standing = new Standing(model);
    State state = standing.state(sampling.judgedIn(model));
    sheet.outcome(state.words(), sample);
    Set<String> seen = new LinkedHashSet<>();
    state.events().forEach(event -> seen.add(event.part() + " " + event.words()));
    seen.forEach(event -> sheet.happening(event, sample));
    List<FigureAnswer> answers = new ArrayList<>(figures.size());
    for (int k = 0; k < figures.size(); k++) {
      FigureAnswer answer = answer(standing, figures.get(k));
      answers.add(answer);
      if (answer instanceof FigureAnswer.Is is) {
        sheet.value(k, is.si(), sample);
      } else if (answer instanceof FigureAnswer.None none) {
        sheet.noValue(k, none.reason().words() + ": " + none.why(), sample);
      }
    }
    for (int k = 0; k < happenings.size(); k++) {
      Optional<Boolean> happens = happens(happenings.get(k), state, answers);
      if (happens.isEmpty()) {
        sheet.leavesOpen(k);
      } else if (happens.get()) {
        sheet.happens(k);
      }
    }
  }

  /** The model has all that the figure names, so what is wrong is a number of this sample. */
  private static FigureAnswer answer(Standing standing, Figure figure) {
    try {
      return standing.answer(figure);
    } catch (ModelException wrong) {
      return new FigureAnswer.None(FigureAnswer.Reason.NOT_DEFINED, Standing.notBuilt(wrong));
    }
  }

  /** Whether it happens; empty if that is open. */
  private Optional<Boolean> happens(Happening happening, State state, List<FigureAnswer> answers) {
    if (happening instanceof Happening.Above above) {
      return number(above.figure(), above.bound(), answers).map(v -> v > above.bound().si());
    }
    if (happening instanceof Happening.Below below) {
      return number(below.figure(), below.bound(), answers).map(v -> v < below.bound().si());
    }
    if (state.kind() == Kind.OPEN) {
      return Optional.empty();
    }
    return Optional.of(
        happening instanceof Happening.AtPart at
            ? state.events().stream().anyMatch(at::isOf)
            : state.kind() == Kind.GIVES_WAY);
  }

  private Optional<Double> number(Figure figure, Quantity bound, List<FigureAnswer> answers) {
    FigureAnswer answer = answers.get(figures.indexOf(figure));
    if (answer instanceof FigureAnswer.Is is) {
      Sampling.checkBound(figure, is, bound);
      return Optional.of(is.si());
    }
    return answer.isUnlimited() ? Optional.of(Double.POSITIVE_INFINITY) : Optional.empty();
  }
}
