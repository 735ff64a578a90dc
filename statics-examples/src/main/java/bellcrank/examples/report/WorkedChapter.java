package bellcrank.examples.report;

import bellcrank.examples.sheet.Markup;
import bellcrank.examples.sheet.Part;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
import bellcrank.statics.explain.WorkedSolution;
import java.util.List;

/** How the forces are worked out by hand, step by step. */
final class WorkedChapter implements CaseChapter {

  @Override
  public String id() {
    return "worked";
  }

  @Override
  public String title() {
    return "Worked by hand";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    if (facts.balance().device().members().isEmpty()
        && facts.balance().device().joints().isEmpty()) {
      return List.of();
    }
    WorkedSolution solution = WorkedSolution.of(facts.balance());
    return Markup.parts(SolutionWriter.of(Detail.FULL, facts.units()).html(solution));
  }
}
