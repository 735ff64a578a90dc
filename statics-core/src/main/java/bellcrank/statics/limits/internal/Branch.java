package bellcrank.statics.limits.internal;

import java.util.List;

/**
 * A part whose condition is not convex. It is covered by choices, each with a linear condition that
 * lets through too much and one that lets through too little; choices are split until both agree.
 */
sealed interface Branch permits DryPin, ScrewThread {

  /** A share of what the part can do; what it means is the part's own affair. */
  record Choice(double from, double to) {}

  /** Whether forces that the part can bear may be multiplied by any positive number. */
  boolean isProportional();

  /** The choice before anything is chosen. */
  Choice whole();

  /** Conditions that every state of the choice fulfils. */
  List<Bound> outer(Choice choice);

  /**
   * Conditions of the choice that only possible states fulfil.
   *
   * @param forces a state to be close to
   */
  List<Bound> inner(Choice choice, double[] forces);

  /**
   * By how much forces miss the true condition.
   *
   * @param forces the state
   * @return in N; 0 or less if they fulfil it
   */
  double miss(double[] forces);

  /**
   * Parts of a choice that cover it.
   *
   * @param forces a state of the choice that misses the true condition; empty if there is none
   */
  List<Choice> split(Choice choice, double[] forces);

  /** Which condition is at its limit at a state, to a force that does not matter. */
  List<Bound> atLimit(double[] forces, double slack);

  /**
   * How far a state is from the limit of one of the conditions of {@link #atLimit}. At the opposite
   * limit there is plenty of room: a part that can be there is not at its limit in every state.
   */
  double room(Bound bound, double[] forces);
}
