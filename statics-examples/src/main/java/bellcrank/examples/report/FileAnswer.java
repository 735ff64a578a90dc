package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expectation;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The answers to a device file: a balance for each case, further asks, expectations.
 *
 * @param name name of the file, as it was given
 * @param file what the file holds
 * @param cases answers for each case that is shown, in order; at least one
 * @param study what the studies of the file come to; empty if it has none
 */
public record FileAnswer(
    String name, DeviceFile file, List<CaseAnswer> cases, Optional<StudyAnswer> study) {

  /**
   * Copies the list.
   *
   * @param name name of the file, as it was given
   * @param file what the file holds
   * @param cases answers for each case that is shown, in order
   * @param study what the studies of the file come to
   */
  public FileAnswer {
    cases = List.copyOf(cases);
  }

  /**
   * Answers a file.
   *
   * @param name name of the file, as it was given
   * @param file what the file holds
   * @param onlyCase the case that is wanted; empty for all
   * @param further asks beyond those of the file
   * @return the answers
   * @throws ModelException if the device has no such case, or an ask names what the device does not
   *     have or another case than the one that is wanted
   */
  public static FileAnswer of(
      String name, DeviceFile file, Optional<String> onlyCase, List<Ask> further) {
    return of(name, file, onlyCase, further, Watch.NONE);
  }

  /**
   * Answers a file and tells what it is busy with, also where studies are worked out later.
   *
   * @param name name of the file, as it was given
   * @param file what the file holds
   * @param onlyCase the case that is wanted; empty for all
   * @param further asks beyond those of the file
   * @param watch hears what is worked out
   * @return the answers
   * @throws ModelException if the device has no such case, or an ask names what the device does not
   *     have or another case than the one that is wanted
   */
  public static FileAnswer of(
      String name, DeviceFile file, Optional<String> onlyCase, List<Ask> further, Watch watch) {
    watch.at("answer to " + name);
    List<LoadCase> cases =
        onlyCase.map(file.device()::loadCase).map(List::of).orElse(file.device().cases());
    for (Ask ask : further) {
      ask.check(file.device());
      if (cases.stream().noneMatch(one -> belongs(ask, one))) {
        throw new ModelException(
            "ask", ask.loadCase().orElse(""), ask.text(), "the case that is shown, or none");
      }
    }
    List<Ask> asks = new ArrayList<>(file.asks());
    asks.addAll(further);
    List<CaseAnswer> answers = new ArrayList<>();
    for (LoadCase one : cases) {
      answers.add(answer(file, one, asks));
    }
    return new FileAnswer(name, file, answers, StudyAnswer.of(file, watch));
  }

  private static CaseAnswer answer(DeviceFile file, LoadCase loadCase, List<Ask> asks) {
    CaseSolution solution = CaseSolution.of(file, loadCase.name());
    List<CaseAnswer.Answered> answered = new ArrayList<>();
    for (Ask ask : asks) {
      if (belongs(ask, loadCase)) {
        answered.add(new CaseAnswer.Answered(ask, solution.answer(ask)));
      }
    }
    List<Checked> checks = new ArrayList<>();
    for (Expectation expectation : file.expectations()) {
      if (ExpectationCheck.caseName(file, expectation).equals(loadCase.name())) {
        checks.add(ExpectationCheck.of(expectation, solution));
      }
    }
    return new CaseAnswer(solution, answered, checks, FindAnswer.all(file, loadCase));
  }

  private static boolean belongs(Ask ask, LoadCase loadCase) {
    return ask.loadCase().map(loadCase.name()::equals).orElse(true);
  }

  /**
   * All expectations of the shown cases.
   *
   * @return case by case
   */
  public List<Checked> checks() {
    return cases.stream().flatMap(one -> one.checks().stream()).toList();
  }

  /**
   * Whether all expectations of the shown cases hold.
   *
   * @return true also if there are none
   */
  public boolean holds() {
    return checks().stream().allMatch(Checked::holds)
        && cases.stream().flatMap(one -> one.finds().stream()).allMatch(FindAnswer::holds)
        && study.map(StudyAnswer::holds).orElse(true);
  }
}
