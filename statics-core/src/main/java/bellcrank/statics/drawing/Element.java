package bellcrank.statics.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An element of the picture, on its way to being written. */
final class Element {

  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Element> children = new ArrayList<>();
  private String text = "";

  private Element(String name) {
    this.name = name;
  }

  static Element of(String name) {
    return new Element(name);
  }

  /** A group of a class. */
  static Element group(String css) {
    return of("g").with("class", css);
  }

  Element with(String attribute, String value) {
    attributes.put(attribute, value);
    return this;
  }

  Element with(String attribute, double value) {
    return with(attribute, Figure.of(value));
  }

  Element text(String content) {
    text = content;
    return this;
  }

  Element add(Element child) {
    children.add(child);
    return this;
  }

  Element addAll(List<Element> more) {
    children.addAll(more);
    return this;
  }

  void write(XMLStreamWriter out) throws XMLStreamException {
    if (children.isEmpty() && text.isEmpty()) {
      out.writeEmptyElement(name);
      writeAttributes(out);
      return;
    }
    out.writeStartElement(name);
    writeAttributes(out);
    if (!text.isEmpty()) {
      out.writeCharacters(text);
    }
    for (Element child : children) {
      child.write(out);
    }
    out.writeEndElement();
  }

  private void writeAttributes(XMLStreamWriter out) throws XMLStreamException {
    for (Map.Entry<String, String> attribute : attributes.entrySet()) {
      out.writeAttribute(attribute.getKey(), attribute.getValue());
    }
  }
}
