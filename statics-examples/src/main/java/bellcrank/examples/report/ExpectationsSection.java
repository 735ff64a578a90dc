package bellcrank.examples.report;

import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.statics.device.Ask;
import bellcrank.statics.units.Quantity;
import java.util.List;

/** What the file expects, beside what was found. */
final class ExpectationsSection {

  /** Digits that are shown beyond the expected ones, so that a near miss can be seen. */
  private static final int MORE_DIGITS = 2;

  private static final int MOST_DIGITS = 15;

  private ExpectationsSection() {}

  static void write(Page page, List<Checked> checks, Amounts amounts) {
    if (checks.isEmpty()) {
      return;
    }
    page.heading("Expected by the file");
    for (Checked one : checks) {
      page.item((one.holds() ? "holds: " : "FAILS: ") + words(one, amounts) + sources(one));
    }
  }

  /** Expected and found, as used by the short check as well. */
  static String words(Checked checked, Amounts amounts) {
    Expectation expectation = checked.expectation();
    Ask ask = expectation.ask();
    int digits = Math.min(expectation.digits() + MORE_DIGITS, MOST_DIGITS);
    return ask.text()
        + " = "
        + expected(expectation, amounts)
        + ", found "
        + AnswerWords.of(ask, checked.found(), amounts, digits);
  }

  private static String expected(Expectation expectation, Amounts amounts) {
    if (expectation.value() instanceof Expected.Words words) {
      return words.text();
    }
    Quantity quantity = ((Expected.Amount) expectation.value()).quantity();
    int digits = expectation.digits();
    return amounts.text(quantity.si(), quantity.dimension(), digits)
        + " to "
        + Listing.count(digits, "digit");
  }

  private static String sources(Checked checked) {
    Expectation expectation = checked.expectation();
    return expectation.source().map(text -> "; source: " + text).orElse("")
        + expectation.printed().map(text -> "; its source prints " + text).orElse("")
        + expectation.reason().map(text -> ", since " + text).orElse("");
  }
}
