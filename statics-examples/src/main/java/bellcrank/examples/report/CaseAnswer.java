package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.util.List;

/**
 * The answers for one case of loads.
 *
 * @param solution the case, solved
 * @param answers the answers to further asks, in order
 * @param checks the expectations of this case, in order
 * @param finds what was found for the searches of this case, in order
 */
public record CaseAnswer(
    CaseSolution solution, List<Answered> answers, List<Checked> checks, List<FindAnswer> finds) {

  /**
   * Copies the lists.
   *
   * @param solution the case, solved
   * @param answers the answers to further asks, in order
   * @param checks the expectations of this case, in order
   * @param finds what was found for the searches of this case, in order
   */
  public CaseAnswer {
    answers = List.copyOf(answers);
    checks = List.copyOf(checks);
    finds = List.copyOf(finds);
  }

  /**
   * The balance of the case.
   *
   * @return the balance
   */
  public Balance balance() {
    return solution.balance();
  }

  /**
   * An ask with its answer.
   *
   * @param ask what is asked
   * @param answer the answer
   */
  public record Answered(Ask ask, Answer answer) {}
}
