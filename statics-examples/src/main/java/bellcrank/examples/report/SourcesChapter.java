package bellcrank.examples.report;

import bellcrank.examples.file.About;
import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.FindPlan;
import bellcrank.examples.file.TableFriction;
import bellcrank.examples.sheet.Part;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.FrictionRow;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where given figures, table values and expected answers come from. */
final class SourcesChapter {

  static final String TITLE = "Sources";

  /** A formula by hand stands beside its value and is no source to look up. */
  private static final String BY_HAND = "by hand";

  private final Set<List<String>> rows = new LinkedHashSet<>();

  private SourcesChapter() {}

  static List<Part> parts(DeviceFile file) {
    SourcesChapter chapter = new SourcesChapter();
    chapter.collect(file);
    return PageParts.of(TITLE, chapter::write);
  }

  private void collect(DeviceFile file) {
    About about = file.about();
    about.source().ifPresent(text -> add("the problem", text));
    about.licence().ifPresent(text -> add("the problem: licence of its source", text));
    about.basis().ifPresent(text -> add("expected values: basis", text));
    for (TableFriction taken : file.tables()) {
      FrictionRow row = taken.tableRow();
      String memory = row.basis() == Basis.FROM_MEMORY ? " (from memory)" : "";
      add("friction of " + taken.part(), row.source() + ": " + row.name() + memory);
    }
    file.foundations()
        .forEach(
            one ->
                one.bearing()
                    .ifPresent(
                        soil -> add("bearing of the ground under " + one.base(), soil.source())));
    if (file.sizing().isPresent()) {
      add("rules and strengths", "named under \"" + StrengthChapter.TITLE + '"');
    }
    if (file.expectations().stream().anyMatch(one -> one.source().isPresent())) {
      add("expected values", "each beside its value under \"Compared with expected values\"");
    }
    for (Expectation one : file.expectations()) {
      one.source()
          .filter(text -> !text.startsWith(BY_HAND))
          .ifPresent(text -> add("expected: " + one.ask().text(), text));
    }
    for (FindPlan one : file.inquiries().finds()) {
      one.expected()
          .flatMap(FindPlan.Values::source)
          .ifPresent(text -> add("to be found: " + one.name(), text));
    }
  }

  private void add(String what, String source) {
    rows.add(List.of(what, source));
  }

  private void write(Page page) {
    if (rows.isEmpty()) {
      return;
    }
    Table table = new Table().column("what", Table.Kind.WORDS).column("source", Table.Kind.WORDS);
    rows.forEach(table::row);
    page.table(table);
  }
}
