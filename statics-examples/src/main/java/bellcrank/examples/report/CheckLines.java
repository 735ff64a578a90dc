package bellcrank.examples.report;

import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The short answer to a file: how many of its expectations hold, and which do not. */
public final class CheckLines {

  private CheckLines() {}

  /**
   * One line for the file, and an indented entry for each expectation that fails.
   *
   * @param answer the answers to the file
   * @param units units of the values
   * @return lines with line ends
   */
  public static String of(FileAnswer answer, UnitSystem units) {
    int all =
        answer.checks().size()
            + (int) expectedFinds(answer)
            + (int) (long) answer.study().map(StudyAnswer::expectations).orElse(0L);
    List<String> failures = new ArrayList<>();
    for (CaseAnswer one : answer.cases()) {
      Amounts amounts = Amounts.of(units, one.balance());
      one.checks().stream()
          .filter(check -> !check.holds())
          .map(check -> ExpectationsSection.words(check, amounts))
          .forEach(failures::add);
      one.finds().stream()
          .filter(found -> !found.holds())
          .map(found -> FindSection.failure(found, amounts))
          .forEach(failures::add);
    }
    answer
        .study()
        .filter(study -> !study.holds())
        .ifPresent(
            study ->
                study.searches().stream()
                    .filter(found -> !found.holds())
                    .map(found -> SearchSection.failure(found, units))
                    .forEach(failures::add));
    Page page = new Page();
    failures.forEach(page::item);
    // the line that names the file stays one line, however long the name is
    return answer.name() + ": " + verdict(all, failures.size()) + "\n" + page;
  }

  private static long expectedFinds(FileAnswer answer) {
    return answer.cases().stream()
        .flatMap(one -> one.finds().stream())
        .filter(one -> one.plan().expected().isPresent())
        .count();
  }

  private static String verdict(int all, int failures) {
    if (all == 0) {
      return "nothing is expected";
    }
    return failures == 0
        ? (all == 1 ? "the expectation holds" : "all " + all + " expectations hold")
        : failures
            + " of "
            + Listing.count(all, "expectation")
            + (failures == 1 ? " fails" : " fail");
  }
}
