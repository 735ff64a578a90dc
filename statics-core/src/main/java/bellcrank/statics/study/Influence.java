package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;

/** What a moving load does to an answer. */
public sealed interface Influence permits InfluenceLine, Influence.None {

  /**
   * What was asked.
   *
   * @return the ask
   */
  Ask ask();

  /**
   * There is no influence line.
   *
   * @param ask what was asked
   * @param why why not: the answer is not fixed by statics, has no number, or is no sum of forces
   */
  record None(Ask ask, Answer.Unanswered why) implements Influence {}
}
