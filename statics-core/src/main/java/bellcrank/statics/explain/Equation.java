package bellcrank.statics.explain;

import java.util.List;

/**
 * An equation of equilibrium of a free body.
 *
 * @param cut the bodies that are cut free as one; a pin that is a body of its own is {@code pin
 *     NAME}
 * @param section whether cutting it free takes some bars of several bodies: a section through a
 *     truss
 * @param condition moments or forces
 * @param terms its terms, unknown ones first; their contributions add up to nothing
 * @param avoided unknowns that act on the cut but not in this equation
 */
public record Equation(
    List<String> cut,
    boolean section,
    Condition condition,
    List<Term> terms,
    List<Unknown> avoided) {

  /**
   * Copies the lists.
   *
   * @param cut the bodies that are cut free as one
   * @param section whether it is a section through a truss
   * @param condition moments or forces
   * @param terms its terms
   * @param avoided unknowns that it leaves out
   */
  public Equation {
    cut = List.copyOf(cut);
    terms = List.copyOf(terms);
    avoided = List.copyOf(avoided);
  }

  /**
   * What the terms with values add up to: rounding, or what open forces or nothing at all must take
   * up.
   *
   * @return in N, or in N·m for moments
   */
  public double sum() {
    double sum = 0;
    for (Term term : terms) {
      sum += term.contribution();
    }
    return sum;
  }
}
