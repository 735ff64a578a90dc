package bellcrank.examples.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * A picture as it stands within a page: without its own style sheet, and with ids that no other
 * picture has.
 *
 * @param markup the element
 * @param width its natural width in pixels
 * @param ratio its width divided by its height, as a number in CSS
 */
record InlinePicture(String markup, int width, String ratio) {

  private static final Pattern REFERENCE = Pattern.compile("url\\(#([^)]*)\\)");

  /** A number with more digits than a picture shows. */
  private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d{2,}");

  private static final int USUAL_WIDTH = 800;

  /** Takes the text of an SVG document, and a prefix for its ids. */
  static InlinePicture of(String svg, String prefix, PictureStyle style) {
    Element root = Xml.parsed(svg);
    String drawn = root.getAttribute("width").replaceAll("[^0-9.]", "");
    int width = drawn.isEmpty() ? USUAL_WIDTH : (int) Math.ceil(Double.parseDouble(drawn));
    String sheet = Xml.withdrawn(root, "style");
    root.setAttribute("class", sheet.isEmpty() ? "chart" : style.nameOf(sheet));
    if (root.getAttribute("viewBox").isEmpty()) {
      root.setAttribute("viewBox", "0 0 " + width + " " + height(root));
    }
    String ratio = ratio(root);
    root.removeAttribute("height");
    root.removeAttribute("width");
    root.setAttribute("role", "img");
    LineJoining.join(root);
    // ids are numbered, since writers may take them from the memory of the machine
    Map<String, String> names = new HashMap<>();
    rename(root, id -> numbered(names, id, prefix));
    return new InlinePicture(Xml.written(root).replaceAll(">\\s*\n\\s*<", ">\n<"), width, ratio);
  }

  private static String ratio(Element root) {
    String[] box = root.getAttribute("viewBox").split(" ", -1);
    return String.format(
        Locale.ROOT, "%.3f", Double.parseDouble(box[2]) / Double.parseDouble(box[3]));
  }

  private static String height(Element root) {
    return root.getAttribute("height").replaceAll("[^0-9.]", "");
  }

  /** Gives ids and references to them new names; the numbers of lines and shapes are rounded. */
  private static void rename(Element element, UnaryOperator<String> names) {
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr attribute = (Attr) attributes.item(i);
      if (!attribute.getName().startsWith("data-")) {
        attribute.setValue(renamed(attribute.getName(), attribute.getValue(), names));
      }
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        rename(inner, names);
      }
    }
  }

  private static String renamed(String attribute, String value, UnaryOperator<String> names) {
    return switch (attribute) {
      case "id" -> names.apply(value);
      case "aria-labelledby" ->
          Stream.of(value.split(" ", -1)).map(names).collect(Collectors.joining(" "));
      case "d" -> LONG_NUMBER.matcher(value).replaceAll(number -> rounded(number.group(), 1));
      case "points", "transform", "x", "y", "x1", "y1", "x2", "y2", "width", "height" ->
          LONG_NUMBER.matcher(value).replaceAll(number -> rounded(number.group(), 2));
      default ->
          value.startsWith("#") && attribute.endsWith("href")
              ? "#" + names.apply(value.substring(1))
              : REFERENCE
                  .matcher(value)
                  .replaceAll(
                      one -> Matcher.quoteReplacement("url(#" + names.apply(one.group(1)) + ")"));
    };
  }

  private static String numbered(Map<String, String> names, String id, String prefix) {
    String next = prefix + (names.size() + 1);
    return names.computeIfAbsent(id, one -> next);
  }

  private static String rounded(String number, int places) {
    return new BigDecimal(number)
        .setScale(places, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
