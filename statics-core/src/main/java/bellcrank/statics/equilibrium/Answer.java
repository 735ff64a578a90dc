package bellcrank.statics.equilibrium;

import bellcrank.statics.geometry.Line2;
import bellcrank.statics.units.Dimension;

/** The answer to an ask. */
public sealed interface Answer {

  /**
   * A number.
   *
   * @param si value in SI units, finite
   * @param dimension what kind of quantity it is
   */
  record Value(double si, Dimension dimension) implements Answer {}

  /**
   * Words, such as an outcome.
   *
   * @param text the words
   */
  record Words(String text) implements Answer {}

  /**
   * A force with its line of action.
   *
   * @param line the line, directed as the force
   * @param size size of the force in N, above 0
   */
  record LineOfAction(Line2 line, double size) implements Answer {}

  /**
   * No answer, and why.
   *
   * @param reason the kind of reason
   * @param explanation a sentence
   */
  record Unanswered(Reason reason, String explanation) implements Answer {}

  /** Why there is no answer. */
  enum Reason {
    /** The device is not in balance, so there are no reactions. */
    NO_BALANCE,
    /** Statics alone does not fix it. */
    UNDETERMINED,
    /** It has no meaning here, such as the direction of a zero force. */
    NOT_DEFINED,
    /** It lies within a range that equilibrium alone cannot narrow. */
    NOT_DECIDED,
    /** A limit is asked for, and there is no end on that side. */
    UNLIMITED
  }
}
