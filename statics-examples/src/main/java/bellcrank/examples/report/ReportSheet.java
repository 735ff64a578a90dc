package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.DeviceFileWriter;
import bellcrank.examples.sheet.Chapter;
import bellcrank.examples.sheet.Part;
import bellcrank.examples.sheet.Sheet;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * The answer to a device file as a document that can be handed on: one page of HTML with everything
 * in it. Its words and numbers are those of the text answer.
 */
public final class ReportSheet {

  private final FileAnswer answer;
  private final DeviceFile file;
  private final Device device;
  private final UnitSystem units;
  private final Making making;
  private final List<Chapter> chapters = new ArrayList<>();
  private final List<String> gist = new ArrayList<>();

  private ReportSheet(FileAnswer answer, UnitSystem units, Making making) {
    this.answer = answer;
    file = answer.file();
    device = file.device();
    this.units = units;
    this.making = making;
  }

  /**
   * Writes the page.
   *
   * @param answer the answers to a file
   * @param units units of the values
   * @param making how it was made
   * @return an HTML document
   */
  public static String html(FileAnswer answer, UnitSystem units, Making making) {
    ReportSheet report = new ReportSheet(answer, units, making);
    report.write();
    return new Sheet(
            device(answer),
            "Calculation sheet: planar statics of a device",
            report.gist,
            report.chapters,
            "Made by bellcrank "
                + making.version()
                + ". The cautions belong to every result in it.")
        .html();
  }

  private static String device(FileAnswer answer) {
    return answer.file().device().name();
  }

  private void write() {
    add("statement", StatementChapter.TITLE, StatementChapter.parts(file.about()));
    add("input", InputChapter.TITLE, InputChapter.parts(file, units));
    add("drawing", "The device", drawing());
    for (int i = 0; i < answer.cases().size(); i++) {
      tell(answer.cases().get(i), "case-" + (i + 1) + "-");
    }
    String hung = "Hung up or carried";
    add(
        "hung",
        hung,
        PageParts.of(hung, page -> HangSection.write(page, file.inquiries(), device, units)));
    chapters.addAll(StudyChapters.of(answer, units));
    add("assumptions", AssumptionsChapter.TITLE, AssumptionsChapter.parts(file, units));
    add("cautions", "Cautions", List.of(new Part.Paragraph(Caution.TEXT)));
    add("sources", SourcesChapter.TITLE, SourcesChapter.parts(file));
    add("making", "How this was made", making());
  }

  private void tell(CaseAnswer one, String id) {
    CaseFacts facts = CaseFacts.of(file, one, units);
    LoadCase loadCase = one.balance().loadCase();
    boolean named = !loadCase.equals(LoadCase.ALL_LOADS);
    if (named) {
      gist.add(CaseWords.of(loadCase) + ".");
    }
    gist.addAll(OutcomeChapter.gist(facts));
    for (CaseChapter chapter : CaseChapter.ALL) {
      String title = chapter.title() + (named ? ", case " + loadCase.name() : "");
      add(id + chapter.id(), title, chapter.parts(facts));
    }
  }

  private List<Part> drawing() {
    if (device.members().isEmpty() && device.joints().isEmpty()) {
      return List.of();
    }
    DrawingOptions options = DrawingOptions.USUAL.withUnits(units);
    return List.of(
        new Part.Picture(
            "The device as drawn, with its supports and loads.",
            DeviceDrawing.of(device).with(options).svg()));
  }

  private List<Part> making() {
    return List.of(
        new Part.Paragraph(
            "Made by bellcrank, version "
                + making.version()
                + ", from the device file below. Whoever has the program and this file can make it"
                + " again and change it."),
        new Part.Verbatim("The command", making.command()),
        new Part.Verbatim("The device file", DeviceFileWriter.write(file)));
  }

  private void add(String id, String title, List<Part> parts) {
    if (!parts.isEmpty()) {
      chapters.add(new Chapter(id, title, parts));
    }
  }
}
