package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows below a picture that tell what its signs mean. */
final class Key {

  private static final double ROW = 19;
  private static final double GAP = 10;

  /** A row: a sign of a given width, drawn from its left end, and words. */
  private record Row(double signWidth, List<Element> sign, String words) {}

  private final List<Row> rows = new ArrayList<>();
  private final Map<String, String> measures = new LinkedHashMap<>();

  /** Adds a row; the sign is drawn to the right of the origin, about the line y = 0. */
  void row(double signWidth, List<Element> sign, String words) {
    rows.add(new Row(signWidth, sign, words));
  }

  /** Adds words without a sign, broken into lines. */
  void note(List<String> lines) {
    for (String line : lines) {
      rows.add(new Row(0, List.of(), line));
    }
  }

  /** Adds a number about the picture as a whole, for who measures in it. */
  void measure(String attribute, String value) {
    measures.put(attribute, value);
  }

  Map<String, String> measures() {
    return measures;
  }

  double height() {
    return ROW * rows.size();
  }

  double width() {
    double widest = 0;
    for (Row row : rows) {
      widest = Math.max(widest, textLeft(row) + TextWidth.of(row.words));
    }
    return widest;
  }

  private static double textLeft(Row row) {
    return row.signWidth > 0 ? row.signWidth + GAP : 0;
  }

  List<Element> elements(Point corner) {
    List<Element> all = new ArrayList<>();
    double y = corner.y() + ROW / 2;
    for (Row row : rows) {
      if (!row.sign.isEmpty()) {
        all.add(
            Element.of("g")
                .with("class", "key")
                .with("transform", "translate(" + Figure.of(corner.x()) + " " + Figure.of(y) + ")")
                .addAll(row.sign));
      }
      double x = corner.x() + textLeft(row);
      String text = row.words;
      all.add(
          Element.group("label note left")
              .with("data-box", Sheet.box(x, y - ROW / 2, x + TextWidth.of(text), y + ROW / 2))
              .add(Element.of("text").with("x", x).with("y", y + TextWidth.EM * 0.36).text(text)));
      y += ROW;
    }
    return all;
  }
}
