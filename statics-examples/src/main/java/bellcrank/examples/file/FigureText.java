package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Figure;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Figures as a file names them: by an ask, or by a word for what the file drives. */
final class FigureText {

  /** The multiple of the driving loads at which something gives. */
  static final String FAILURE = "first failure";

  /** How far the drive goes. */
  static final String STROKE = "stroke";

  private FigureText() {}

  /** The text of a figure. */
  static String of(Figure figure) {
    if (figure instanceof Figure.OfAsk one) {
      return one.ask().text();
    }
    return figure instanceof Figure.FirstFailure ? FAILURE : STROKE;
  }

  /** Copies a list that must not be empty and has each figure once. */
  static List<Figure> each(String key, List<Figure> figures) {
    if (figures.isEmpty()) {
      throw new ModelException("study", key, "none", "at least one ask");
    }
    Set<String> seen = new HashSet<>();
    for (Figure figure : figures) {
      if (!seen.add(of(figure))) {
        throw new ModelException("study", key, '"' + of(figure) + '"', "each ask once");
      }
    }
    return List.copyOf(figures);
  }

  /** Checks that a file can state a figure. */
  static void check(Figure figure, FileParts file) {
    if (figure instanceof Figure.OfAsk one) {
      if (one.ask().text().equals(FAILURE) || one.ask().text().equals(STROKE)) {
        throw new ModelException(
            "study",
            "ask",
            '"' + one.ask().text() + '"',
            "an ask with its measure, as in stroke.x");
      }
      if (one.loadCase().isPresent()) {
        throw new ModelException(
            "study", "ask", one.ask().text(), "the case within the ask, as in heel.x in storm");
      }
      one.ask().check(file.model().device());
      figure.of(file.model()); // what is no number for a study shows here
    } else if (!of(of(figure), file.driving(), file.travel()).equals(Optional.of(figure))) {
      throw new ModelException(
          "study", "ask", of(figure), "what the keys driving, or drive and travel, state");
    }
  }

  /** The figure that one of the words stands for; empty if the file does not state it. */
  static Optional<Figure> of(
      String word, Optional<Variation.Multiple> driving, Optional<TravelPlan> travel) {
    return word.equals(FAILURE)
        ? driving.map(Figure::firstFailure)
        : travel.map(
            plan -> new Figure.Stroke(plan.drive(), plan.from(), plan.to(), Optional.empty()));
  }
}
