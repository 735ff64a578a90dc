package bellcrank.examples.sheet;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Joins straight lines that go on from one another, which some writers give one by one. */
final class LineJoining {

  private LineJoining() {}

  static void join(Element element) {
    List<Element> run = new ArrayList<>();
    Node child = element.getFirstChild();
    while (child != null) {
      Node next = child.getNextSibling();
      if (child instanceof Element inner) {
        if (!inner.getTagName().equals("line")) {
          join(inner);
        }
        if (!run.isEmpty() && !goesOn(run.get(run.size() - 1), inner)) {
          replace(run);
        }
        if (inner.getTagName().equals("line")) {
          run.add(inner);
        }
      }
      child = next;
    }
    replace(run);
  }

  private static boolean goesOn(Element line, Element next) {
    return next.getTagName().equals("line")
        && line.getAttribute("x2").equals(next.getAttribute("x1"))
        && line.getAttribute("y2").equals(next.getAttribute("y1"))
        && line.getAttribute("style").equals(next.getAttribute("style"))
        && line.getAttribute("clip-path").equals(next.getAttribute("clip-path"));
  }

  private static void replace(List<Element> run) {
    if (run.size() > 1) {
      Element first = run.get(0);
      StringBuilder points = new StringBuilder(place(first, "1"));
      run.forEach(line -> points.append(' ').append(place(line, "2")));
      Element joined =
          first.getOwnerDocument().createElementNS(first.getNamespaceURI(), "polyline");
      joined.setAttribute("points", points.toString());
      for (String name : List.of("style", "clip-path")) {
        if (first.hasAttribute(name)) {
          joined.setAttribute(name, first.getAttribute(name));
        }
      }
      first.getParentNode().insertBefore(joined, first);
      run.forEach(line -> line.getParentNode().removeChild(line));
    }
    run.clear();
  }

  private static String place(Element line, String end) {
    return line.getAttribute("x" + end) + "," + line.getAttribute("y" + end);
  }
}
