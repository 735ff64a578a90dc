package bellcrank.statics.explain;

import java.util.List;

/** Paragraphs as plain text. */
final class TextForm {

  private TextForm() {}

  static String of(List<Passage> passages) {
    StringBuilder text = new StringBuilder();
    for (Passage passage : passages) {
      String words = words(passage.pieces());
      switch (passage.kind()) {
        case HEAD -> text.append(text.isEmpty() ? "" : "\n").append(words).append('\n');
        case SENTENCE ->
            text.append(passage.number() > 0 ? passage.number() + ". " : "")
                .append(words)
                .append('\n');
        case LINE -> text.append("   ").append(words).append('\n');
        case ENTRY -> text.append("  ").append(words).append('\n');
      }
    }
    return text.toString();
  }

  private static String words(List<Piece> pieces) {
    StringBuilder text = new StringBuilder();
    for (Piece piece : pieces) {
      text.append(
          piece instanceof Piece.Words words
              ? words.text()
              : formula(((Piece.Formula) piece).tokens()));
    }
    return text.toString();
  }

  static String formula(List<Piece.Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (Piece.Token token : tokens) {
      if (token instanceof Piece.Sign sign) {
        text.append(sign.leading() ? sign.sign() : " " + sign.sign() + " ");
      } else if (token instanceof Piece.Letter letter) {
        text.append(letter.symbol().text());
      } else if (token instanceof Piece.Figure figure) {
        String number = figure.number() + (figure.unit().isEmpty() ? "" : " " + figure.unit());
        text.append(figure.bracketed() ? "(" + number + ")" : number);
      }
    }
    return text.toString();
  }
}
