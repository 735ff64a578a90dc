package bellcrank.examples.report;

import bellcrank.examples.file.Expected;
import bellcrank.examples.file.SearchPlan;
import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.Goal;
import bellcrank.statics.study.SearchAnswer;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What searches for numbers found, what stops them, or the nearest miss. */
final class SearchSection {

  private final StudyValues values;

  private SearchSection(UnitSystem units) {
    values = new StudyValues(units);
  }

  static void write(Page page, StudyAnswer answer, UnitSystem units) {
    if (answer.studies().searches().isEmpty()) {
      return;
    }
    SearchSection section = new SearchSection(units);
    page.heading("Searched");
    for (SearchFound one : answer.searches()) {
      page.item(section.question(one.plan()) + ":");
      section.results(one.answer(), Amounts.DIGITS).forEach(page::subitem);
      one.plan()
          .expected()
          .ifPresent(
              expected ->
                  page.subitem(
                      (one.holds() ? "holds: " : "FAILS: ")
                          + section.expected(expected)
                          + expected.source().map(text -> "; source: " + text).orElse("")));
    }
  }

  /** The failed expectation of a search, for the short check. */
  static String failure(SearchFound one, UnitSystem units) {
    SearchSection section = new SearchSection(units);
    SearchPlan.Values expected = one.plan().expected().orElseThrow();
    int digits = Math.min(15, Math.max(Amounts.DIGITS, expected.digits() + 2));
    return one.plan().name()
        + ": "
        + section.expected(expected)
        + ", found "
        + String.join("; ", section.results(one.answer(), digits));
  }

  private String question(SearchPlan plan) {
    List<String> free = new ArrayList<>();
    plan.free()
        .forEach(
            one ->
                free.add(
                    one.input().text()
                        + " from "
                        + values.text(one.from(), one.input())
                        + " to "
                        + values.text(one.to(), one.input())));
    List<String> wishes = new ArrayList<>();
    plan.goals().forEach(goal -> wishes.add(words(goal)));
    String aim =
        plan.aim()
            .map(
                one ->
                    one.figure()
                            .map(figure -> figure.text())
                            .or(() -> one.input().map(input -> input.text()))
                            .orElse("")
                        + (one.greatest() ? " is greatest" : " is least"))
            .orElse("");
    String goals = Listing.of(wishes);
    return plan.name()
        + ": "
        + Listing.of(free)
        + " such that "
        + (aim.isEmpty() ? goals : aim + (goals.isEmpty() ? "" : " while " + goals));
  }

  private String words(Goal goal) {
    if (goal instanceof Goal.AtMost one) {
      return one.figure().text() + " is at most " + values.text(one.bound());
    }
    if (goal instanceof Goal.AtLeast one) {
      return one.figure().text() + " is at least " + values.text(one.bound());
    }
    if (goal instanceof Goal.Between one) {
      return one.figure().text()
          + " is between "
          + values.text(one.least())
          + " and "
          + values.text(one.greatest());
    }
    return goal instanceof Goal.Equal one
        ? one.figure().text() + " is " + values.text(one.value())
        : goal.text();
  }

  private List<String> results(SearchAnswer answer, int digits) {
    List<String> results = new ArrayList<>();
    if (answer instanceof SearchAnswer.Found found) {
      found.settings().forEach(one -> results.add(setting(one, digits)));
      found
          .wanted()
          .ifPresent(
              one ->
                  results.add(one.figure().text() + " comes to " + number(one.answer(), digits)));
      found.goals().forEach(one -> results.add(goal(one)));
      List<String> stops = stops(found);
      if (found.wanted().isPresent() || !stops.isEmpty()) {
        results.add(
            stops.isEmpty()
                ? "nothing stops it: it turns there"
                : "what stops it going further: " + Listing.of(stops));
      }
    } else if (answer instanceof SearchAnswer.Infeasible miss) {
      results.add("no such numbers were found; the nearest miss:");
      miss.settings().forEach(one -> results.add(setting(one, digits)));
      miss.goals().forEach(one -> results.add(goal(one)));
    } else if (answer instanceof SearchAnswer.NoAnswer none) {
      results.add("no answer anywhere: " + String.join("; ", none.reasons()));
    }
    if (answer.isCutShort()) {
      results.add(
          "given up after " + Listing.count(answer.looks(), "look") + "; there may be more");
    }
    return results;
  }

  private String setting(SearchAnswer.Setting one, int digits) {
    Quantity value = one.quantity();
    return one.free().input().text() + " at " + values.text(value.si(), value.dimension(), digits);
  }

  private String number(FigureAnswer answer, int digits) {
    return answer instanceof FigureAnswer.Is is
        ? values.text(is.si(), is.dimension(), digits)
        : values.text(answer);
  }

  private String goal(SearchAnswer.Outcome one) {
    String state = one.isKept() ? one.isUsedUp() ? "kept, just" : "kept" : missed(one);
    String comes =
        one.answer().map(answer -> ": it comes to " + values.text(answer) + ", ").orElse(": ");
    return words(one.goal()) + comes + state;
  }

  private String missed(SearchAnswer.Outcome one) {
    Optional<FigureAnswer> answer = one.answer();
    return answer.isPresent() && answer.get() instanceof FigureAnswer.Is is
        ? "missed by " + values.text(one.missedBy(), is.dimension())
        : "missed";
  }

  private List<String> stops(SearchAnswer.Found found) {
    List<String> stops = new ArrayList<>();
    found.goals().stream()
        .filter(SearchAnswer.Outcome::isUsedUp)
        .forEach(one -> stops.add(words(one.goal())));
    found.settings().forEach(one -> one.words().ifPresent(stops::add));
    return stops;
  }

  private String expected(SearchPlan.Values expected) {
    if (expected.values().isEmpty()) {
      return "expected that no numbers will do";
    }
    List<String> parts = new ArrayList<>();
    expected.values().forEach((input, one) -> parts.add(input.text() + " " + text(one, expected)));
    expected.reaches().ifPresent(one -> parts.add("reaching " + text(one, expected)));
    return "expected " + Listing.of(parts) + " to " + Listing.count(expected.digits(), "digit");
  }

  private static String text(Expected.Amount one, SearchPlan.Values expected) {
    return StudyValues.kept(one.quantity().format(one.unit(), expected.digits()));
  }
}
