package bellcrank.statics.explain;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;

/**
 * Chooses how many digits numbers are carried with, so that each printed equation, worked out again
 * from what is printed, gives the printed answer to its digits.
 */
final class Carried {

  /** Digits of the answers. */
  static final int ANSWER_DIGITS = 4;

  /** Fewest digits that are carried. */
  static final int LEAST = 6;

  /** Most digits that are carried: a double holds no more. */
  static final int MOST = 15;

  /** Share by which an answer may change when it is worked out again. */
  static final double CLOSE = 2e-5;

  /** An unknown below this share of the other terms is held to their size. */
  static final double SMALL = 1e-3;

  private Carried() {}

  static Figures of(WorkedSolution solution, UnitSystem units) {
    for (int digits = LEAST; digits < MOST; digits++) {
      Figures figures = new Figures(units, digits);
      if (solution.equations().stream().allMatch(one -> holds(one, figures))) {
        return figures;
      }
    }
    return new Figures(units, MOST);
  }

  private static boolean holds(Equation equation, Figures figures) {
    double sum = 0;
    double largest = 0;
    double least = Double.MAX_VALUE;
    for (Term term : equation.terms()) {
      double coefficient =
          figures.rounded(term.coefficient(), term.arm() ? Dimension.LENGTH : Dimension.NUMBER);
      double part = coefficient * figures.rounded(term.value().orElse(0), term.kind());
      sum += part;
      largest = Math.max(largest, Math.abs(part));
      least = term.sought() ? Math.min(least, Math.abs(part)) : least;
    }
    return Math.abs(sum) <= CLOSE * Math.max(Math.min(least, largest), SMALL * largest);
  }
}
