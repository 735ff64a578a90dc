package bellcrank.examples.report;

import bellcrank.examples.sheet.Chapter;
import bellcrank.examples.sheet.Part;
import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The studies of a file as chapters of a report. */
final class StudyChapters {

  private StudyChapters() {}

  static List<Chapter> of(FileAnswer answer, UnitSystem units) {
    Optional<StudyAnswer> found = answer.study();
    if (found.isEmpty()) {
      return List.of();
    }
    StudyAnswer study = found.get();
    List<Chapter> chapters = new ArrayList<>();
    String rough = "When numbers are not known well";
    List<Part> parts =
        new ArrayList<>(PageParts.of(rough, page -> RoughSection.write(page, study, units)));
    SampleHistograms.of(answer, units)
        .forEach(
            (figure, svg) ->
                parts.add(
                    new Part.Picture(
                        "How " + figure + " is spread over the samples, with its percentiles.",
                        svg)));
    add(chapters, "rough", rough, parts);
    String searched = "Searched dimensions";
    add(
        chapters,
        "search",
        searched,
        PageParts.of(searched, page -> SearchSection.write(page, study, units)));
    String combined = "Variants, combinations and moving loads";
    List<Part> others =
        new ArrayList<>(
            PageParts.of(
                combined,
                page -> CombinedSection.write(page, study, answer.file().travel(), units)));
    for (StudyAnswer.Moved moved : study.moved()) {
      List<InfluenceLine> lines = new ArrayList<>();
      moved.influences().forEach(one -> line(one, lines));
      if (!lines.isEmpty()) {
        others.add(
            new Part.Picture(
                "Answers by the place of the moving load " + moved.plan().load() + ".",
                InfluenceChart.svg(
                    answer.file().device().name() + ", " + moved.plan().name(), lines, units)));
      }
    }
    add(chapters, "combined", combined, others);
    return chapters;
  }

  private static void line(Object influence, List<InfluenceLine> lines) {
    if (influence instanceof InfluenceLine line) {
      lines.add(line);
    }
  }

  private static void add(List<Chapter> chapters, String id, String title, List<Part> parts) {
    if (!parts.isEmpty()) {
      chapters.add(new Chapter(id, title, parts));
    }
  }
}
