package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.List;

/** How far the loads use each part, and what gives first as they grow. */
final class StrengthChapter implements CaseChapter {

  static final String TITLE = "What gives first";

  @Override
  public String id() {
    return "strength";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    return PageParts.of(
        TITLE,
        page ->
            facts
                .answer()
                .solution()
                .strength()
                .ifPresent(
                    one ->
                        StrengthSection.write(
                            page, one, facts.balance(), facts.amounts(), facts.units())));
  }
}
