package bellcrank.examples;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** A page of HTML that is well-formed as XML as well, and what it says. */
public final class HtmlText {

  private final Element root;
  private final List<Element> all = new ArrayList<>();

  private HtmlText(Element root) {
    this.root = root;
    collect(root);
  }

  /** Reads a page; one that is not well-formed fails. */
  public static HtmlText of(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      // the document type has no address, so nothing is fetched
      byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
      return new HtmlText(
          factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes)).getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(e);
    }
  }

  private void collect(Element element) {
    all.add(element);
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        collect(inner);
      }
    }
  }

  /** The element that holds all. */
  public Element root() {
    return root;
  }

  /** All elements in order. */
  public List<Element> all() {
    return List.copyOf(all);
  }

  /** The elements of some names, in order. */
  public List<Element> elements(String... names) {
    Set<String> wanted = Set.of(names);
    return all.stream().filter(one -> wanted.contains(one.getTagName())).toList();
  }

  /** What elements of some names say, those below them included. */
  public List<String> texts(String... names) {
    return elements(names).stream().map(this::text).toList();
  }

  /** What an element says, with single blanks; cells of a row are kept apart. */
  public String text(Element element) {
    StringBuilder text = new StringBuilder();
    append(element, text);
    return plain(text.toString());
  }

  private static void append(Node node, StringBuilder text) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      text.append(node.getNodeValue());
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      append(child, text);
    }
    if (node.getNodeName().equals("td") || node.getNodeName().equals("th")) {
      text.append(' ');
    }
  }

  /** A text with single blanks, broken nowhere. */
  public static String plain(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").strip();
  }

  /** The style sheet. */
  public String css() {
    return String.join("\n", texts("style"));
  }

  /** The names of the attributes of an element. */
  public static List<String> attributes(Element element) {
    NamedNodeMap attributes = element.getAttributes();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < attributes.getLength(); i++) {
      names.add(attributes.item(i).getNodeName());
    }
    return names;
  }

  /** The children of an element that have this name. */
  public static List<Element> children(Element element, String name) {
    List<Element> children = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner && inner.getTagName().equals(name)) {
        children.add(inner);
      }
    }
    return children;
  }
}
