package bellcrank.examples.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Lets long formulas go on in the next line: browsers break no line within a formula, so it is cut
 * before each sum sign and relation that is in no brackets.
 */
final class FormulaBreaks {

  private static final Set<String> BEFORE = Set.of("+", "−", "-", "=");

  private FormulaBreaks() {}

  /** Cuts all formulas of a paragraph that stand on a line of their own. */
  static void cut(Element paragraph) {
    NodeList found = paragraph.getElementsByTagName("math");
    List<Element> formulas = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      formulas.add((Element) found.item(i));
    }
    formulas.stream()
        .filter(formula -> formula.getAttribute("display").equals("block"))
        .forEach(FormulaBreaks::cutOne);
  }

  private static void cutOne(Element formula) {
    formula.removeAttribute("display");
    List<Node> tokens = new ArrayList<>();
    for (Node child = formula.getFirstChild(); child != null; child = child.getNextSibling()) {
      tokens.add(child);
    }
    Node parent = formula.getParentNode();
    Element piece = formula;
    int depth = 0;
    for (Node token : tokens) {
      String sign = token.getNodeName().equals("mo") ? token.getTextContent() : "";
      depth += sign.equals("(") ? 1 : sign.equals(")") ? -1 : 0;
      boolean first = token.isSameNode(tokens.get(0));
      if (depth == 0 && BEFORE.contains(sign) && !first) {
        Node after = piece.getNextSibling();
        piece = (Element) formula.cloneNode(false);
        parent.insertBefore(parent.getOwnerDocument().createTextNode(" "), after);
        parent.insertBefore(piece, after);
        // at the beginning of a formula it would be taken for a sign of the next number
        ((Element) token).setAttribute("form", "infix");
      }
      piece.appendChild(token);
    }
  }
}
