package bellcrank.examples.report;

import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/** What the studies of a file come to. */
final class StudySection {

  private StudySection() {}

  static void write(Page page, FileAnswer answer, UnitSystem units) {
    Optional<StudyAnswer> study = answer.study();
    if (study.isPresent()) {
      RoughSection.write(page, study.get(), units);
      SearchSection.write(page, study.get(), units);
      CombinedSection.write(page, study.get(), answer.file().travel(), units);
    }
  }
}
