package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.List;

/** What can move, what is held more than once, and the mechanical advantage. */
final class MotionChapter implements CaseChapter {

  @Override
  public String id() {
    return "motion";
  }

  @Override
  public String title() {
    return "Motion, restraint and advantage";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    return PageParts.of(
        title(),
        page -> {
          AdvantageSection.write(page, facts.balance(), facts.amounts());
          MotionSection.write(page, facts.balance(), facts.limits(), facts.amounts());
          NearCriticalSection.write(page, facts.balance(), facts.amounts());
        });
  }
}
