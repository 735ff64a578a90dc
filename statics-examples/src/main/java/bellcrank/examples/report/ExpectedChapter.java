package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.List;

/** What the file expects, beside what was found. */
final class ExpectedChapter implements CaseChapter {

  @Override
  public String id() {
    return "expected";
  }

  @Override
  public String title() {
    return "Compared with expected values";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    return PageParts.of(
        title(), page -> ExpectationsSection.write(page, facts.answer().checks(), facts.amounts()));
  }
}
