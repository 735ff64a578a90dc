package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expectation;
import bellcrank.statics.harness.CheckedAnswer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Holds answers against what a device file expects. */
public final class ExpectationCheck {

  private ExpectationCheck() {}

  /**
   * Checks all expectations of a file, each in its own case, or in the first one if it names none.
   *
   * @param file the file
   * @return one result for each expectation, in order
   */
  public static List<Checked> all(DeviceFile file) {
    Map<String, CaseSolution> solutions = new HashMap<>();
    List<Checked> all = new ArrayList<>();
    for (Expectation expectation : file.expectations()) {
      CaseSolution solution =
          solutions.computeIfAbsent(
              caseName(file, expectation), name -> CaseSolution.of(file, name));
      all.add(of(expectation, solution));
    }
    return List.copyOf(all);
  }

  /**
   * Checks one expectation of a file.
   *
   * @param expectation the expectation
   * @param solution the file's device in the expectation's case
   * @return the result
   */
  public static Checked of(Expectation expectation, CaseSolution solution) {
    CheckedAnswer checked =
        expectation.answer().check(solution.answer(expectation.ask()), solution.balance());
    return new Checked(expectation, checked.found(), checked.allowed(), checked.holds());
  }

  /**
   * Name of the case to which an expectation belongs.
   *
   * @param file the file
   * @param expectation one of its expectations
   * @return the case that its ask names, or the first one
   */
  public static String caseName(DeviceFile file, Expectation expectation) {
    return expectation.ask().loadCase().orElseGet(() -> file.device().cases().get(0).name());
  }
}
