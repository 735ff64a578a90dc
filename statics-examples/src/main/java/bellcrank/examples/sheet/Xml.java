package bellcrank.examples.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads what writers of XML have made, and writes parts of it. Nothing is fetched. */
final class Xml {

  private Xml() {}

  static Element parsed(String text) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(text)))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static String written(Node node) {
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter text = new StringWriter();
      transformer.transform(new DOMSource(node), new StreamResult(text));
      return text.toString();
    } catch (TransformerException e) {
      throw new IllegalStateException(e);
    }
  }

  static String written(NodeList nodes) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < nodes.getLength(); i++) {
      text.append(written(nodes.item(i)));
    }
    return text.toString();
  }

  /** Takes elements of a name out of an element and gives back their text. */
  static String withdrawn(Element root, String name) {
    NodeList found = root.getElementsByTagName(name);
    StringBuilder text = new StringBuilder();
    while (found.getLength() > 0) {
      Node one = found.item(0);
      text.append(one.getTextContent());
      one.getParentNode().removeChild(one);
    }
    return text.toString();
  }
}
