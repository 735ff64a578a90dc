package bellcrank.examples.report;

/** The answers to further asks. */
final class AskedSection {

  private AskedSection() {}

  static void write(Page page, CaseAnswer answer, Amounts amounts) {
    if (answer.answers().isEmpty()) {
      return;
    }
    page.heading("Asked");
    for (CaseAnswer.Answered one : answer.answers()) {
      page.item(
          one.ask().text()
              + " = "
              + AnswerWords.of(one.ask(), one.answer(), amounts, Amounts.DIGITS)
              + NameHint.of(one.ask(), answer.balance().device()));
    }
  }
}
