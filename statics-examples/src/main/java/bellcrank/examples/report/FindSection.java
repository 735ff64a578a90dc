package bellcrank.examples.report;

import bellcrank.examples.file.Expected;
import bellcrank.examples.file.FindPlan;
import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.motion.Find;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was found for the unknowns of a file. */
final class FindSection {

  private static final int MORE_DIGITS = 2;

  private FindSection() {}

  static void write(
      Page page, List<FindAnswer> answers, Optional<TravelPlan> travel, Amounts amounts) {
    if (answers.isEmpty()) {
      return;
    }
    page.heading("Found");
    for (FindAnswer one : answers) {
      page.item(question(one, travel, amounts) + ":");
      results(one, amounts, Amounts.DIGITS).forEach(page::subitem);
      one.plan()
          .expected()
          .ifPresent(
              expected ->
                  page.subitem(
                      (one.holds() ? "holds: " : "FAILS: ")
                          + expected(expected, amounts)
                          + expected.source().map(text -> "; source: " + text).orElse("")));
    }
  }

  /** The failed expectation of a search, for the short check. */
  static String failure(FindAnswer one, Amounts amounts) {
    FindPlan.Values expected = one.plan().expected().orElseThrow();
    int digits = Math.min(15, Math.max(Amounts.DIGITS, expected.digits() + MORE_DIGITS));
    return one.plan().name()
        + ": "
        + expected(expected, amounts)
        + ", found "
        + String.join("; ", results(one, amounts, digits));
  }

  private static String expected(FindPlan.Values expected, Amounts amounts) {
    List<String> values = new ArrayList<>();
    for (Expected.Amount value : expected.values()) {
      values.add(amounts.text(value.quantity().si(), value.unit(), expected.digits()));
    }
    return "expected "
        + (values.isEmpty()
            ? "none"
            : String.join(" and ", values) + " to " + Listing.count(expected.digits(), "digit"));
  }

  private static String question(FindAnswer one, Optional<TravelPlan> travel, Amounts amounts) {
    FindPlan plan = one.plan();
    String where =
        plan.range()
            .map(
                range ->
                    "from "
                        + amounts.text(range.from(), one.dimension())
                        + " to "
                        + amounts.text(range.to(), one.dimension()))
            .orElse("over the travel");
    return plan.name()
        + ": "
        + FindWords.of(plan.unknown(), travel)
        + " at which "
        + plan.ask().text()
        + " is "
        + amounts.text(plan.target().si(), plan.target().dimension())
        + ", looked for "
        + where;
  }

  private static List<String> results(FindAnswer one, Amounts amounts, int digits) {
    if (one.found().isEmpty()) {
      return List.of("not told: the device cannot be driven so");
    }
    Find found = one.found().get();
    if (found instanceof Find.Always) {
      return List.of("at every value looked at");
    }
    if (found instanceof Find.None none) {
      return List.of(
          "nowhere; "
              + none.nearest()
                  .map(
                      miss ->
                          "it comes nearest at "
                              + amounts.text(miss.value(), one.dimension(), digits)
                              + ", where it is "
                              + amounts.text(miss.answer(), one.plan().target().dimension()))
                  .orElse("there is no answer in the whole range"));
    }
    Find.At at = (Find.At) found;
    List<String> results = new ArrayList<>();
    at.values().forEach(value -> results.add(amounts.text(value, one.dimension(), digits)));
    at.intervals()
        .forEach(
            between ->
                results.add(
                    "anywhere from "
                        + amounts.text(between.from(), one.dimension(), digits)
                        + " to "
                        + amounts.text(between.to(), one.dimension(), digits)));
    return results;
  }
}
