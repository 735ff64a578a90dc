package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Lays out a scene with its heading, key and words, and writes it as SVG. */
final class Sheet {

  private static final double MARGIN = 14;
  private static final int LONGEST_HEADING = 56;
  private static final double LEAST_WIDTH = 220;
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private final Scene scene;
  private final String heading;
  private final List<String> words;
  private final Key key;

  /**
   * A sheet.
   *
   * @param heading what the picture shows, in one line
   * @param words what it shows, sentence by sentence
   * @param key what its signs mean
   */
  Sheet(Scene scene, String heading, List<String> words, Key key) {
    this.scene = scene;
    this.heading = heading;
    this.words = words;
    this.key = key;
  }

  String svg() {
    List<PlacedLabel> labels = new LabelPlacer(scene.obstacles()).place(scene.labels());
    Room drawn = scene.bounds();
    for (PlacedLabel label : labels) {
      drawn = drawn.with(label.box());
    }
    List<Element> content = new ArrayList<>();
    List<String> title = TextWidth.lines(heading, LONGEST_HEADING);
    double widest = Math.max(LEAST_WIDTH, key.width());
    for (String line : title) {
      // a heading is set in heavier letters
      widest = Math.max(widest, 1.1 * TextWidth.of(line));
    }
    double half = Math.max(widest, drawn.width()) / 2;
    double middle = drawn.centre().x();
    double left = middle - half;
    double top = drawn.top() - title.size() * TextWidth.LINE - MARGIN;
    Element head =
        Element.group("label title left")
            .with("data-box", box(left, top, left + widest, top + title.size() * TextWidth.LINE));
    for (int i = 0; i < title.size(); i++) {
      double y = top + (i + 0.8) * TextWidth.LINE;
      head.add(Element.of("text").with("x", left).with("y", y).text(title.get(i)));
    }
    content.add(head);
    content.addAll(scene.elements());
    labels.forEach(label -> content.add(label.element()));
    double keyTop = drawn.bottom() + MARGIN;
    content.addAll(key.elements(Point.of(left, keyTop)));
    Room all = new Room(left, top, middle + half, keyTop + key.height()).grown(MARGIN);
    return write(all, content);
  }

  static String box(double left, double top, double right, double bottom) {
    return Figure.of(left)
        + " "
        + Figure.of(top)
        + " "
        + Figure.of(right)
        + " "
        + Figure.of(bottom);
  }

  private String write(Room box, List<Element> content) {
    Element svg =
        Element.of("svg")
            .with("xmlns", NAMESPACE)
            .with("viewBox", view(box))
            .with("width", Math.ceil(box.width()))
            .with("height", Math.ceil(box.height()))
            .with("data-drawing", "bellcrank")
            .with("role", "img")
            .with("aria-labelledby", "title desc");
    key.measures().forEach(svg::with);
    svg.add(Element.of("title").with("id", "title").text(heading));
    svg.add(Element.of("desc").with("id", "desc").text(String.join(" ", words)));
    svg.add(Element.of("style").text(Stylesheet.text()));
    svg.add(
        Element.of("rect")
            .with("class", "paper")
            .with("x", Math.floor(box.left()))
            .with("y", Math.floor(box.top()))
            .with("width", Math.ceil(box.width()) + 1)
            .with("height", Math.ceil(box.height()) + 1));
    svg.addAll(content);
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      out.writeStartDocument("UTF-8", "1.0");
      svg.write(out);
      out.writeEndDocument();
      out.close();
    } catch (XMLStreamException e) {
      // a text in memory takes everything
      throw new IllegalStateException(e);
    }
    return text + "\n";
  }

  private static String view(Room box) {
    return Figure.of(Math.floor(box.left()))
        + " "
        + Figure.of(Math.floor(box.top()))
        + " "
        + Figure.of(Math.ceil(box.width()) + 1)
        + " "
        + Figure.of(Math.ceil(box.height()) + 1);
  }
}
