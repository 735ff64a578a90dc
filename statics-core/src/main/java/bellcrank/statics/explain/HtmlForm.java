package bellcrank.statics.explain;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Paragraphs as HTML with MathML. The stream writer escapes all that is written. */
final class HtmlForm {

  private static final String MATHML = "http://www.w3.org/1998/Math/MathML";

  private final XMLStreamWriter out;

  private HtmlForm(XMLStreamWriter out) {
    this.out = out;
  }

  static String of(List<Passage> passages) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      new HtmlForm(out).write(passages);
      out.close();
    } catch (XMLStreamException e) {
      // a text in memory takes anything
      throw new IllegalStateException(e);
    }
    return text.append('\n').toString();
  }

  private void write(List<Passage> passages) throws XMLStreamException {
    out.writeStartElement("section");
    boolean list = false;
    for (Passage passage : passages) {
      boolean entry = passage.kind() == Passage.Kind.ENTRY;
      if (list && !entry) {
        out.writeEndElement();
      }
      if (entry && !list) {
        out.writeStartElement("ul");
      }
      list = entry;
      write(passage);
    }
    if (list) {
      out.writeEndElement();
    }
    out.writeEndElement();
  }

  private void write(Passage passage) throws XMLStreamException {
    out.writeCharacters("\n");
    out.writeStartElement(
        switch (passage.kind()) {
          case HEAD -> "h3";
          case ENTRY -> "li";
          default -> "p";
        });
    if (passage.number() > 0) {
      element("b", passage.number() + ".");
      out.writeCharacters(" ");
    }
    boolean line = passage.kind() == Passage.Kind.LINE;
    for (Piece piece : passage.pieces()) {
      if (piece instanceof Piece.Words words) {
        out.writeCharacters(words.text());
      } else {
        formula(((Piece.Formula) piece).tokens(), line);
      }
    }
    out.writeEndElement();
  }

  private void element(String name, String text) throws XMLStreamException {
    out.writeStartElement(name);
    out.writeCharacters(text);
    out.writeEndElement();
  }

  private void formula(List<Piece.Token> tokens, boolean line) throws XMLStreamException {
    out.writeStartElement("math");
    out.writeDefaultNamespace(MATHML);
    if (line) {
      out.writeAttribute("display", "block");
    }
    for (Piece.Token token : tokens) {
      if (token instanceof Piece.Sign sign) {
        element("mo", sign.sign());
      } else if (token instanceof Piece.Letter letter) {
        symbol(letter.symbol());
      } else if (token instanceof Piece.Figure figure) {
        figure(figure);
      }
    }
    out.writeEndElement();
  }

  private void symbol(Symbol symbol) throws XMLStreamException {
    if (symbol.index().isEmpty()) {
      element("mi", symbol.main());
      return;
    }
    out.writeStartElement("msub");
    element("mi", symbol.main());
    element("mtext", symbol.index());
    out.writeEndElement();
  }

  private void figure(Piece.Figure figure) throws XMLStreamException {
    if (figure.bracketed()) {
      element("mo", "(");
    }
    int exponent = figure.number().indexOf('e');
    if (exponent < 0) {
      element("mn", figure.number());
    } else {
      element("mn", figure.number().substring(0, exponent));
      element("mo", "×");
      out.writeStartElement("msup");
      element("mn", "10");
      element("mn", figure.number().substring(exponent + 1).replace('-', '−'));
      out.writeEndElement();
    }
    if (!figure.unit().isEmpty()) {
      element("mtext", "\u00a0" + figure.unit());
    }
    if (figure.bracketed()) {
      element("mo", ")");
    }
  }
}
