package bellcrank.statics.equilibrium;

import bellcrank.statics.units.Dimension;

/** Mechanical advantage: resistance over effort. */
public sealed interface Advantage {

  /**
   * Both ratios are defined.
   *
   * @param ideal velocity ratio effort over resistance: what the advantage would be without weights
   *     and losses
   * @param actual ratio of the forces in the balance, with weights and losses
   */
  record Ratio(double ideal, double actual) implements Advantage {}

  /**
   * Only the velocity ratio is defined.
   *
   * @param ideal velocity ratio effort over resistance
   * @param why why there is no ratio of forces
   */
  record IdealOnly(double ideal, String why) implements Advantage {}

  /**
   * Only the ratio of forces is defined.
   *
   * @param actual ratio of the forces in the balance
   * @param why why there is no ratio of velocities
   */
  record ActualOnly(double actual, String why) implements Advantage {}

  /**
   * Neither is defined.
   *
   * @param why the reason in a sentence
   */
  record NotDefined(String why) implements Advantage {}

  /**
   * An answer that holds the velocity ratio.
   *
   * @return the number, or why there is none
   */
  default Answer idealAnswer() {
    if (this instanceof Ratio ratio) {
      return new Answer.Value(ratio.ideal(), Dimension.NUMBER);
    }
    if (this instanceof IdealOnly only) {
      return new Answer.Value(only.ideal(), Dimension.NUMBER);
    }
    String why = this instanceof ActualOnly only ? only.why() : ((NotDefined) this).why();
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }

  /**
   * An answer that holds the ratio of forces.
   *
   * @return the number, or why there is none
   */
  default Answer actualAnswer() {
    if (this instanceof Ratio ratio) {
      return new Answer.Value(ratio.actual(), Dimension.NUMBER);
    }
    if (this instanceof ActualOnly only) {
      return new Answer.Value(only.actual(), Dimension.NUMBER);
    }
    String why = this instanceof IdealOnly only ? only.why() : ((NotDefined) this).why();
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }
}
