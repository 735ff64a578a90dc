package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import bellcrank.statics.equilibrium.Outcome;
import java.util.ArrayList;
import java.util.List;

/** How it comes out, and what was sought. */
final class OutcomeChapter implements CaseChapter {

  /** More lines than this are no gist. */
  private static final int MOST_LINES = 5;

  @Override
  public String id() {
    return "outcome";
  }

  @Override
  public String title() {
    return "Outcome";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    return PageParts.of(
        title(),
        page -> {
          write(page, facts);
          sought(page, facts);
        });
  }

  private static void sought(Page page, CaseFacts facts) {
    if (!(facts.balance().outcome() instanceof Outcome.NoBalance)) {
      SoughtSection.write(
          page, facts.answer().solution(), facts.limits(), facts.amounts(), facts.units());
    }
  }

  private static void write(Page page, CaseFacts facts) {
    if (facts.limits().isPresent()) {
      VerdictSection.write(
          page, facts.limits().get(), facts.balance(), facts.amounts(), facts.units());
    } else {
      page.paragraph(OutcomeWords.of(facts.balance(), facts.units()));
    }
  }

  /** The outcome, and what was sought, in a few sentences. */
  static List<String> gist(CaseFacts facts) {
    Page page = new Page();
    write(page, facts);
    sought(page, facts);
    List<String> gist = new ArrayList<>();
    for (PageBlock block : page.blocks()) {
      if (block instanceof PageBlock.Paragraph first && gist.isEmpty()) {
        gist.add(first.words());
      } else if (block instanceof PageBlock.Item item && gist.size() < MOST_LINES) {
        gist.add(item.words());
      }
    }
    return gist;
  }
}
