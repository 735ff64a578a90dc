package bellcrank.examples.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A page of HTML that needs nothing but itself: no network, no script.
 *
 * @param title its title
 * @param kind what kind of page it is, above the title
 * @param summary the gist, below the title
 * @param chapters its chapters, in order
 * @param foot the last line
 */
public record Sheet(
    String title, String kind, List<String> summary, List<Chapter> chapters, String foot) {

  /**
   * Copies the lists.
   *
   * @param title its title
   * @param kind what kind of page it is, above the title
   * @param summary the gist, below the title
   * @param chapters its chapters, in order
   * @param foot the last line
   */
  public Sheet {
    summary = List.copyOf(summary);
    chapters = List.copyOf(chapters);
  }

  /** Name of the mark that tells pages of this program from others. */
  public static final String MARK = "name=\"generator\" content=\"bellcrank report\"";

  /**
   * The page.
   *
   * @return an HTML document that is well-formed as XML as well
   */
  public String html() {
    PartWriter writer = new PartWriter();
    List<Section> sections = new ArrayList<>();
    for (Chapter chapter : chapters) {
      StringBuilder body = new StringBuilder();
      chapter.parts().forEach(part -> body.append(writer.html(part)));
      sections.add(
          new Section(sections.size() + 1, chapter.id(), chapter.title(), body.toString()));
    }
    return Template.PAGE.filled(
        new View(
            title,
            kind,
            summary,
            sections,
            foot,
            Template.text("sheet.css"),
            writer.pictureStyle()));
  }

  /** A chapter as its template reads it. */
  record Section(int number, String id, String title, String body) {}

  /** The page as its template reads it. */
  record View(
      String title,
      String kind,
      List<String> summary,
      List<Section> sections,
      String foot,
      String style,
      String pictureStyle) {}
}
