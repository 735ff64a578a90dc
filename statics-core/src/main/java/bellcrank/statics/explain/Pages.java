package bellcrank.statics.explain;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Composes a solution as paragraphs of words and formulas. */
final class Pages {

  private final WorkedSolution solution;
  private final Detail detail;
  private final UnitSystem units;
  private final Figures figures;
  private final EquationWords equations;
  private final StepWords steps;
  private final List<Passage> passages = new ArrayList<>();
  private int number;

  private Pages(WorkedSolution solution, Detail detail, UnitSystem units) {
    this.solution = solution;
    this.detail = detail;
    this.units = units;
    figures = Carried.of(solution, units);
    equations = new EquationWords(figures, solution.bodies());
    steps = new StepWords(solution.balance().device(), units, figures);
  }

  static List<Passage> of(WorkedSolution solution, Detail detail, UnitSystem units) {
    Pages pages = new Pages(solution, detail, units);
    pages.write();
    return List.copyOf(pages.passages);
  }

  private void write() {
    if (detail == Detail.FULL) {
      legend();
    }
    if (detail != Detail.ANSWER) {
      head("Solution");
    }
    for (Step step : solution.steps()) {
      if (step instanceof Step.Result) {
        continue;
      }
      boolean always =
          step instanceof Step.Broken
              || step instanceof Step.Moves
              || step instanceof Step.Open
              || step instanceof Step.AtLimit
              || step instanceof Step.JustHeld
              || step instanceof Step.Judged
              || step instanceof Step.Finding;
      if (detail != Detail.ANSWER || always) {
        write(step);
      }
    }
    List<Step.Result> results = solution.results();
    if (!results.isEmpty()) {
      head("Answers");
      results.forEach(this::result);
    }
  }

  private void legend() {
    boolean none = solution.unknowns().isEmpty() && solution.given().isEmpty();
    if (none) {
      return;
    }
    head("Symbols");
    for (Unknown one : solution.unknowns()) {
      entry(List.of(letter(one.symbol()), new Piece.Words(": " + one.meaning())));
    }
    for (Given one : solution.given()) {
      Piece.Figure size = figures.figure(Math.abs(one.si()), one.kind());
      String words = size.number() + " " + size.unit() + " " + one.words();
      entry(List.of(letter(one.symbol()), new Piece.Words(": " + one.name() + ", " + words)));
    }
    sentence(
        0,
        List.of(
            new Piece.Words(
                "Moments count positive counter-clockwise. Numbers are carried with "
                    + figures.digits()
                    + " digits, so that every line can be worked out again from what is printed;"
                    + " the answers are rounded to "
                    + Carried.ANSWER_DIGITS
                    + ".")));
  }

  static Piece letter(Symbol symbol) {
    return new Piece.Formula(List.of(new Piece.Letter(symbol)));
  }

  private void head(String words) {
    passages.add(new Passage(Passage.Kind.HEAD, 0, List.of(new Piece.Words(words))));
  }

  private void entry(List<Piece> pieces) {
    passages.add(new Passage(Passage.Kind.ENTRY, 0, List.copyOf(pieces)));
  }

  private void sentence(int at, List<Piece> pieces) {
    passages.add(new Passage(Passage.Kind.SENTENCE, at, List.copyOf(pieces)));
  }

  private void line(Piece... pieces) {
    passages.add(new Passage(Passage.Kind.LINE, 0, List.of(pieces)));
  }

  private void write(Step step) {
    if (step instanceof Step.Single single) {
      single(single);
    } else if (step instanceof Step.Together together) {
      together(together);
    } else if (step instanceof Step.NotMet unmet) {
      notMet(unmet);
    } else if (step instanceof Step.Open open) {
      open(open);
    } else {
      sentence(++number, steps.words(step));
      if (step instanceof Step.Margin margin) {
        line(new LawWords(figures).ratio(margin));
      }
    }
  }

  private void single(Step.Single step) {
    Equation equation = step.equation();
    if (detail == Detail.OUTLINE) {
      sentence(
          ++number,
          List.of(
              new Piece.Words(equations.what(equation) + ": "),
              equations.found(step.found()),
              new Piece.Words(" (" + step.found().unknown().words(step.found().si()) + ").")));
      return;
    }
    List<Piece> pieces = intro(equation);
    List<Piece> reason = equations.reason(equation);
    boolean more = equation.terms().stream().anyMatch(term -> !term.sought());
    if (!reason.isEmpty()) {
      pieces.add(new Piece.Words(", so only "));
      pieces.add(letter(step.found().unknown().symbol()));
      pieces.add(new Piece.Words(" is unknown."));
    } else {
      pieces.add(new Piece.Words("only "));
      pieces.add(letter(step.found().unknown().symbol()));
      pieces.add(new Piece.Words(more ? " is unknown." : " acts, so there is none of it."));
    }
    sentence(++number, pieces);
    lines(equation, more);
    found(step.found());
  }

  private List<Piece> intro(Equation equation) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece.Words(equations.what(equation) + ": "));
    pieces.addAll(equations.reason(equation));
    return pieces;
  }

  private void lines(Equation equation, boolean numbers) {
    line(equations.formula(equation, false, EquationWords.NOTHING));
    if (numbers) {
      line(equations.formula(equation, true, EquationWords.NOTHING));
    }
  }

  private void found(Step.Found found) {
    line(equations.found(found), new Piece.Words(" (" + found.unknown().words(found.si()) + ")"));
  }

  private void together(Step.Together step) {
    List<Unknown> unknowns = step.found().stream().map(Step.Found::unknown).toList();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        new Piece.Words("No equation has one unknown alone. These are solved together for "));
    pieces.addAll(EquationWords.symbols(unknowns));
    boolean others =
        step.equations().stream()
            .flatMap(one -> one.terms().stream())
            .anyMatch(term -> term.value().isEmpty());
    pieces.add(new Piece.Words(others ? "; what else is open in them cancels." : "."));
    sentence(++number, pieces);
    for (Equation equation : step.equations()) {
      if (detail == Detail.FULL) {
        List<Piece> intro = intro(equation);
        boolean law = equation.condition() instanceof Condition.Law;
        String end = equations.reason(equation).isEmpty() && !law ? "as it stands." : ".";
        sentence(
            0, law ? List.of(new Piece.Words(equations.what(equation) + end)) : with(intro, end));
        boolean numbers =
            equation.terms().stream().anyMatch(term -> !term.sought() && term.value().isPresent());
        lines(equation, numbers);
      } else {
        String words = equations.what(equation);
        sentence(0, List.of(new Piece.Words(words + ".")));
      }
    }
    step.found().forEach(this::found);
  }

  private static List<Piece> with(List<Piece> pieces, String end) {
    List<Piece> all = new ArrayList<>(pieces);
    all.add(new Piece.Words(end));
    return all;
  }

  private void notMet(Step.NotMet step) {
    Equation equation = step.equation();
    List<Piece> pieces = intro(equation);
    boolean reason = !equations.reason(equation).isEmpty();
    pieces.add(
        new Piece.Words(
            reason
                ? ", so nothing is left that could take up the loads. The equation cannot be met:"
                : "nothing is left that could take up the loads. The equation cannot be met:"));
    sentence(++number, pieces);
    boolean moments = equation.condition() instanceof Condition.Moments;
    Piece.Figure sum = figures.figure(equation.sum(), moments ? Dimension.MOMENT : Dimension.FORCE);
    line(equations.formula(equation, true, sum), new Piece.Words(", and not 0"));
  }

  private void open(Step.Open step) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece.Words("Statics alone leaves open "));
    pieces.addAll(EquationWords.symbols(step.open()));
    pieces.add(
        new Piece.Words(
            step.equations().isEmpty()
                ? ": no equation is left for it."
                : ". These equations are left for them:"));
    sentence(++number, pieces);
    step.equations().forEach(one -> line(equations.formula(one, true, EquationWords.NOTHING)));
    if (step.released().containsAll(step.open())) {
      return;
    }
    List<Piece> advice = new ArrayList<>();
    advice.add(new Piece.Words("If "));
    advice.addAll(EquationWords.symbols(step.released()));
    boolean one = step.released().size() == 1;
    advice.add(
        new Piece.Words(
            (one ? " were" : " were all")
                + " released or known from elsewhere, statics would settle the rest."));
    sentence(0, advice);
  }

  private void result(Step.Result result) {
    String value;
    if (result.answer() instanceof Answer.Value answer) {
      value = units.format(answer.si(), answer.dimension(), Carried.ANSWER_DIGITS);
    } else {
      value = steps.words(result.answer());
    }
    entry(List.of(new Piece.Words(result.ask().text() + ": " + value)));
  }
}
