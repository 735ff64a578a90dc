package bellcrank.examples.sheet;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Takes a section of HTML that a writer of XML has made apart: headings, lists, and numbered
 * paragraphs with what belongs to them.
 */
public final class Markup {

  private final List<Part> parts = new ArrayList<>();
  private final List<Part.Step> steps = new ArrayList<>();
  private String title = "";
  private final StringBuilder body = new StringBuilder();

  private Markup() {}

  /**
   * The parts of a section. A paragraph that begins with a number in bold begins a step; the
   * paragraphs below it belong to it.
   *
   * @param section one element, well-formed as XML
   * @return its parts
   */
  public static List<Part> parts(String section) {
    Markup markup = new Markup();
    Element root = Xml.parsed(section);
    for (Node node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        markup.add(element);
      }
    }
    markup.closeSteps();
    return markup.parts;
  }

  private void add(Element element) {
    FormulaBreaks.cut(element);
    boolean paragraph = element.getTagName().equals("p");
    if (paragraph && numbered(element)) {
      closeStep();
      title = Xml.written(element.getChildNodes());
    } else if (paragraph && !title.isEmpty()) {
      body.append(Xml.written(element)).append('\n');
    } else if (element.getTagName().equals("h3")) {
      closeSteps();
      parts.add(new Part.Heading(element.getTextContent()));
    } else {
      closeSteps();
      parts.add(new Part.Written(Xml.written(element)));
    }
  }

  private static boolean numbered(Element paragraph) {
    return paragraph.getFirstChild() instanceof Element first && first.getTagName().equals("b");
  }

  private void closeStep() {
    if (!title.isEmpty()) {
      steps.add(new Part.Step(title, body.toString()));
      title = "";
      body.setLength(0);
    }
  }

  private void closeSteps() {
    closeStep();
    if (!steps.isEmpty()) {
      parts.add(new Part.Steps(steps));
      steps.clear();
    }
  }
}
