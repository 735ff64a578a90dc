package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.util.List;

/**
 * The answers for one case of loads.
 *
 * @param balance the balance in this case
 * @param answers the answers to further asks, in order
 * @param checks the expectations of this case, in order
 */
public record CaseAnswer(Balance balance, List<Answered> answers, List<Checked> checks) {

  /**
   * Copies the lists.
   *
   * @param balance the balance in this case
   * @param answers the answers to further asks, in order
   * @param checks the expectations of this case, in order
   */
  public CaseAnswer {
    answers = List.copyOf(answers);
    checks = List.copyOf(checks);
  }

  /**
   * An ask with its answer.
   *
   * @param ask what is asked
   * @param answer the answer
   */
  public record Answered(Ask ask, Answer answer) {}
}
