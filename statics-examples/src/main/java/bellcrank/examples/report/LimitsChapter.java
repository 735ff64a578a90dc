package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.List;

/** How far it can go until it gives way, and what the ground under it bears. */
final class LimitsChapter implements CaseChapter {

  @Override
  public String id() {
    return "limits";
  }

  @Override
  public String title() {
    return "Limits: slipping, tipping, lifting, sinking";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    return PageParts.of(
        title(),
        page -> {
          facts
              .limits()
              .ifPresent(
                  one -> {
                    LimitWords.write(
                        page, one.limits(), facts.balance(), facts.amounts(), facts.units());
                    StatesSection.write(
                        page, one.states(), facts.answer().solution(), facts.amounts());
                    GroundSection.write(page, one.grounds(), facts.amounts(), facts.units());
                  });
          facts.side().ifPresent(one -> SideSection.write(page, one, facts.units()));
        });
  }
}
