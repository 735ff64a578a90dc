package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.TableFriction;
import bellcrank.statics.device.Ask;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answers to device files as JSON, in SI units. The names are described on a page of their own,
 * {@code shared/answer-json.md}, and stay as they are within a format.
 */
public final class ReportJson {

  /** Number of the format that the names belong to. */
  private static final int FORMAT = 1;

  private ReportJson() {}

  /**
   * Writes the answers to files.
   *
   * @param answers the answers, file by file
   * @param refusals what kept files or asks from being answered
   * @return a JSON object, with a line end
   */
  public static String of(List<FileAnswer> answers, List<Refusal> refusals) {
    return of(answers, refusals, Optional.empty());
  }

  /**
   * Writes the answers to files, and how they are worked out by hand.
   *
   * @param answers the answers, file by file
   * @param refusals what kept files or asks from being answered
   * @param worked what is to be worked out, all forces if it names nothing; empty if nothing is
   * @return a JSON object, with a line end
   */
  public static String of(
      List<FileAnswer> answers, List<Refusal> refusals, Optional<List<Ask>> worked) {
    JsonPage page = new JsonPage();
    page.object(
        () -> {
          page.whole("format", FORMAT);
          page.object("units", () -> units(page));
          page.list("files", answers, file -> file(page, file, worked));
          page.list("problems", refusals, one -> problem(page, one));
          page.text("caution", Caution.TEXT);
        });
    return page.finish();
  }

  private static void units(JsonPage page) {
    for (Dimension dimension : Dimension.values()) {
      String symbol = dimension.si().symbol();
      page.text(name(dimension), symbol.isEmpty() ? "1" : symbol);
    }
  }

  /** The word for a kind of quantity, which is a field of {@code units}. */
  static String name(Dimension dimension) {
    return dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static void file(JsonPage page, FileAnswer answer, Optional<List<Ask>> worked) {
    page.object(
        () -> {
          page.text("file", answer.name());
          page.text("device", answer.file().device().name());
          page.list("assumptions", answer.file().tables(), one -> assumption(page, one));
          new InquiriesJson(page, answer.file()).ofFile();
          page.list(
              "answers",
              answer.cases(),
              one -> page.object(() -> answer(page, one, answer.file(), worked)));
          new StudyJson(page).write(answer.study());
        });
  }

  private static void assumption(JsonPage page, TableFriction taken) {
    page.object(
        () -> {
          page.text("part", taken.part());
          page.number("value", taken.value());
          page.text("row", taken.row());
          page.text("take", taken.take().map(TableFriction.Take::word));
          page.text("source", taken.tableRow().source());
          page.text("words", TakenWords.of(taken));
        });
  }

  private static void answer(
      JsonPage page, CaseAnswer one, DeviceFile file, Optional<List<Ask>> worked) {
    new CaseJson(
            page, one, LimitsAnswer.of(one.solution(), file), SideAnswer.of(one.solution(), file))
        .write();
    new InquiriesJson(page, file).ofCase(one);
    TravelJson.write(page, TravelAnswer.of(file, one.balance().loadCase()));
    worked.ifPresent(asks -> new WorkedJson(page).write(WorkedCase.of(one, asks)));
  }

  private static void problem(JsonPage page, Refusal refusal) {
    page.object(
        () -> {
          page.text("file", refusal.file());
          whole(page, "line", refusal.line());
          whole(page, "column", refusal.column());
          page.text("sentence", refusal.sentence());
        });
  }

  private static void whole(JsonPage page, String name, Optional<Integer> value) {
    if (value.isPresent()) {
      page.whole(name, value.get());
    } else {
      page.nothing(name);
    }
  }
}
