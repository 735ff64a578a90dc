package bellcrank.examples.report;

import bellcrank.examples.file.About;
import bellcrank.examples.sheet.Part;
import java.util.ArrayList;
import java.util.List;

/** What is given and asked, in the words of the file. */
final class StatementChapter {

  static final String TITLE = "Statement";

  private StatementChapter() {}

  static List<Part> parts(About about) {
    List<Part> parts = new ArrayList<>();
    about.statement().ifPresent(text -> parts.add(new Part.Paragraph(text, true)));
    about.note().ifPresent(text -> parts.add(new Part.Paragraph("Note: " + text, true)));
    return parts;
  }
}
