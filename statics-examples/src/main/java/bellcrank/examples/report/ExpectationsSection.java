package bellcrank.examples.report;

import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.examples.file.StrengthAsk;
import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
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
    return StrengthAsk.text(ask)
        + " = "
        + expected(expectation, amounts)
        + ", found "
        + found(checked, amounts, digits);
  }

  private static String expected(Expectation expectation, Amounts amounts) {
    if (expectation.value() instanceof Expected.Words words) {
      return words.text();
    }
    Expected.Amount amount = (Expected.Amount) expectation.value();
    int digits = expectation.digits();
    return amounts.text(amount.quantity().si(), amount.unit(), digits)
        + " to "
        + Listing.count(digits, "digit");
  }

  /** What was found, in the unit of what is expected, so that the two can be compared. */
  private static String found(Checked checked, Amounts amounts, int digits) {
    Ask ask = checked.expectation().ask();
    if (checked.expectation().value() instanceof Expected.Amount amount
        && !amount.unit().symbol().isEmpty()
        && checked.found() instanceof Answer.Value value
        && value.dimension() == amount.unit().dimension()) {
      return amounts.text(value.si(), amount.unit(), digits);
    }
    return AnswerWords.of(ask, checked.found(), amounts, digits);
  }

  private static String sources(Checked checked) {
    Expectation expectation = checked.expectation();
    return expectation.source().map(text -> "; source: " + text).orElse("")
        + expectation.printed().map(text -> "; its source prints " + text).orElse("")
        + expectation.reason().map(text -> ", since " + text).orElse("");
  }
}
