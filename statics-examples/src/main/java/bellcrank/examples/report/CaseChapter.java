package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.List;

/** A chapter of a report that tells one case. */
interface CaseChapter {

  /** All of them, in order. */
  List<CaseChapter> ALL =
      List.of(
          new OutcomeChapter(),
          new FreeBodyChapter(),
          new ForcesChapter(),
          new WorkedChapter(),
          new InsideChapter(),
          new LimitsChapter(),
          new StrengthChapter(),
          new MotionChapter(),
          new TravelChapter(),
          new FurtherChapter(),
          new ExpectedChapter());

  /** What a link names it by. */
  String id();

  /** Its title. */
  String title();

  /** What it holds; a chapter without parts is left out. */
  List<Part> parts(CaseFacts facts);
}
