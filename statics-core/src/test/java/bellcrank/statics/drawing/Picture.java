package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture read back from its text, as anybody could who measures in it. */
final class Picture {

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  private final String svg;
  private final Element root;

  private Picture(String svg, Element root) {
    this.svg = svg;
    this.root = root;
  }

  static Picture of(String svg) {
    try {
      Document document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      return new Picture(svg, document.getDocumentElement());
    } catch (Exception e) {
      throw new AssertionError(svg, e);
    }
  }

  /** An arrow or strip that carries a force. */
  record Shown(
      String name, String on, Vector force, Point at, double moment, boolean strip, Vector drawn) {}

  List<Element> all(String tag) {
    NodeList found = root.getElementsByTagName(tag);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    return all;
  }

  List<Shown> forces() {
    List<Shown> forces = new ArrayList<>();
    for (Element group : all("g")) {
      if (group.hasAttribute("data-force")) {
        boolean strip = group.getAttribute("class").startsWith("strip");
        forces.add(
            new Shown(
                group.getAttribute("data-force"),
                group.getAttribute("data-on"),
                Vector.of(number(group, "data-fx"), number(group, "data-fy")),
                Point.of(number(group, "data-x"), number(group, "data-y")),
                number(group, "data-moment"),
                strip,
                strip ? Vector.ZERO : drawn(group)));
      }
    }
    return forces;
  }

  /** The couples' moments in N·m. */
  List<Double> couples() {
    return all("g").stream()
        .filter(group -> group.hasAttribute("data-couple"))
        .map(group -> number(group, "data-moment"))
        .toList();
  }

  List<String> open() {
    return all("g").stream()
        .filter(group -> group.hasAttribute("data-open"))
        .map(group -> group.getAttribute("data-open"))
        .toList();
  }

  private static double number(Element element, String attribute) {
    return element.hasAttribute(attribute)
        ? Double.parseDouble(element.getAttribute(attribute))
        : 0;
  }

  double number(String attribute) {
    assertThat(root.hasAttribute(attribute)).as(attribute).isTrue();
    return number(root, attribute);
  }

  String attribute(String name) {
    return root.getAttribute(name);
  }

  /** From the start of the shaft to the tip of the head, y up. */
  private static Vector drawn(Element group) {
    List<Double> shaft = numbers(path(group, "shaft"));
    List<Double> head = numbers(path(group, "head"));
    return Vector.of(head.get(0) - shaft.get(0), shaft.get(1) - head.get(1));
  }

  private static String path(Element group, String css) {
    NodeList paths = group.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      if (path.getAttribute("class").equals(css)) {
        return path.getAttribute("d");
      }
    }
    throw new AssertionError("no " + css);
  }

  static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      numbers.add(Double.valueOf(matcher.group()));
    }
    return numbers;
  }

  Room view() {
    List<Double> view = numbers(root.getAttribute("viewBox"));
    return new Room(view.get(0), view.get(1), view.get(0) + view.get(2), view.get(1) + view.get(3));
  }

  List<Room> labels() {
    List<Room> boxes = new ArrayList<>();
    for (Element group : all("g")) {
      if (group.hasAttribute("data-box")) {
        List<Double> n = numbers(group.getAttribute("data-box"));
        boxes.add(new Room(n.get(0), n.get(1), n.get(2), n.get(3)));
      }
    }
    return boxes;
  }

  String text(String tag) {
    return all(tag).get(0).getTextContent();
  }

  /** All texts that are seen. */
  List<String> texts() {
    return all("text").stream().map(Element::getTextContent).toList();
  }

  /** What holds for every picture whatever it shows. */
  Picture isWellMade() {
    assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(200_000);
    assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("<script");
    assertThat(svg.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(text("title")).isNotBlank();
    assertThat(text("desc")).isNotBlank();
    List<Room> labels = labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int k = 0; k < i; k++) {
        Room other = labels.get(k);
        assertThat(labels.get(i).overlaps(other))
            .as("%s and %s in %s", labels.get(i), other, svg)
            .isFalse();
      }
      isInside(Point.of(labels.get(i).left(), labels.get(i).top()));
      isInside(Point.of(labels.get(i).right(), labels.get(i).bottom()));
    }
    for (Element path : all("path")) {
      boolean key = ((Element) path.getParentNode()).getAttribute("class").equals("key");
      boolean inKey =
          path.getParentNode().getParentNode() instanceof Element above
              && above.getAttribute("class").equals("key");
      List<Double> numbers = numbers(path.getAttribute("d").replaceAll("A[^MLZ]*", ""));
      for (int i = 0; !key && !inKey && i + 1 < numbers.size(); i += 2) {
        isInside(Point.of(numbers.get(i), numbers.get(i + 1)));
      }
    }
    for (Element circle : all("circle")) {
      double r = number(circle, "r");
      Point centre = Point.of(number(circle, "cx"), number(circle, "cy"));
      isInside(Point.of(centre.x() - r, centre.y() - r));
      isInside(Point.of(centre.x() + r, centre.y() + r));
    }
    return this;
  }

  private void isInside(Point point) {
    Room view = view();
    assertThat(point.x()).as(svg).isBetween(view.left(), view.right());
    assertThat(point.y()).as(svg).isBetween(view.top(), view.bottom());
  }

  /** Each arrow has the direction of its force and the length that the stated rule gives. */
  Picture isToScale() {
    for (Shown shown : forces()) {
      if (!shown.strip()) {
        double length = shown.drawn().norm();
        double wanted = length(shown.force().norm());
        // coordinates are written to a thousandth
        assertThat(length).as(shown.name()).isCloseTo(wanted, within(1e-3 * wanted + 2e-3));
        double sine = shown.drawn().cross(shown.force()) / shown.force().norm();
        assertThat(sine).as(shown.name()).isCloseTo(0, within(1e-3 * length + 2e-3));
        if (wanted > 0.01) {
          assertThat(shown.drawn().dot(shown.force())).as(shown.name()).isPositive();
        }
      }
    }
    return this;
  }

  private double length(double force) {
    return attribute("data-scale").equals("linear")
        ? number("data-units-per-newton") * force
        : number("data-least-length")
            + number("data-units-per-tenfold") * Math.log10(force / number("data-least-force"));
  }
}
