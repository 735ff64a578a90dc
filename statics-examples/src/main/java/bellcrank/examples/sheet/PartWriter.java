package bellcrank.examples.sheet;

import java.util.ArrayList;
import java.util.List;

/** Sets the parts of a page and numbers its tables and pictures. */
final class PartWriter {

  /** A table of no more rows than this is printed on one page. */
  private static final int MOST_WHOLE = 16;

  private final PictureStyle style = new PictureStyle();
  private int tables;
  private int pictures;

  String html(Part part) {
    if (part instanceof Part.Heading heading) {
      return Template.HEADING.filled(heading);
    }
    if (part instanceof Part.Paragraph paragraph) {
      return Template.PARAGRAPH.filled(paragraph);
    }
    if (part instanceof Part.Entries entries) {
      return Template.ENTRIES.filled(entries);
    }
    if (part instanceof Part.Grid grid) {
      return Template.TABLE.filled(table(grid));
    }
    if (part instanceof Part.Picture picture) {
      return Template.PICTURES.filled(figures(List.of(picture)));
    }
    if (part instanceof Part.Pictures several) {
      return Template.PICTURES.filled(figures(several.pictures()));
    }
    if (part instanceof Part.Written written) {
      return Template.WRITTEN.filled(written);
    }
    if (part instanceof Part.Verbatim verbatim) {
      return Template.VERBATIM.filled(verbatim);
    }
    return Template.STEPS.filled((Part.Steps) part);
  }

  /** The style that all pictures so far have in common. */
  String pictureStyle() {
    return style.text();
  }

  private Table table(Part.Grid grid) {
    List<Row> rows = new ArrayList<>();
    for (List<String> cells : grid.rows()) {
      List<Cell> row = new ArrayList<>();
      for (int i = 0; i < cells.size(); i++) {
        row.add(new Cell(cells.get(i), grid.columns().get(i).numeric(), i == 0));
      }
      rows.add(new Row(row));
    }
    return new Table(++tables, grid.caption(), rows.size() <= MOST_WHOLE, grid.columns(), rows);
  }

  private Figures figures(List<Part.Picture> all) {
    List<Figure> figures = new ArrayList<>();
    for (Part.Picture picture : all) {
      int number = ++pictures;
      InlinePicture inline = InlinePicture.of(picture.svg(), "f" + number + "-", style);
      figures.add(
          new Figure(number, picture.caption(), inline.width(), inline.ratio(), inline.markup()));
    }
    return new Figures(figures, figures.size() > 1);
  }

  /** A table as its template reads it. */
  record Table(
      int number, String caption, boolean whole, List<Part.Column> columns, List<Row> rows) {}

  /** A row of it. */
  record Row(List<Cell> cells) {}

  /** A cell of it. */
  record Cell(String text, boolean numeric, boolean first) {}

  /** Pictures as their template reads them. */
  record Figures(List<Figure> figures, boolean several) {}

  /** One of them. */
  record Figure(int number, String caption, int width, String ratio, String svg) {}
}
