package bellcrank.examples.report;

import bellcrank.examples.file.Inquiries;
import bellcrank.examples.sheet.Part;
import java.util.List;

/** What the file asks besides. */
final class FurtherChapter implements CaseChapter {

  @Override
  public String id() {
    return "further";
  }

  @Override
  public String title() {
    return "Further answers";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    Inquiries asked = facts.file().inquiries();
    return PageParts.of(
        title(),
        page -> {
          AskedSection.write(page, facts.answer(), facts.amounts());
          FindSection.write(page, facts.answer().finds(), facts.file().travel(), facts.amounts());
          HaulSection.write(
              page,
              asked.winches(),
              asked.measuredLines(),
              facts.answer().solution(),
              facts.amounts());
        });
  }
}
