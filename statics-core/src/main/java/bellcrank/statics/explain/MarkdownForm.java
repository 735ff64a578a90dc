package bellcrank.statics.explain;

import java.util.List;

/** Paragraphs as Markdown; formulas as code, which takes any character but the backtick. */
final class MarkdownForm {

  private static final String SPECIAL = "\\`*_{}[]<>#|~&";

  private MarkdownForm() {}

  static String of(List<Passage> passages) {
    StringBuilder text = new StringBuilder();
    boolean list = false;
    for (Passage passage : passages) {
      String words = words(passage.pieces());
      boolean entry = passage.kind() == Passage.Kind.ENTRY;
      if (!text.isEmpty() && !(list && entry)) {
        text.append('\n');
      }
      list = entry;
      switch (passage.kind()) {
        case HEAD -> text.append("### ").append(words);
        case SENTENCE ->
            text.append(passage.number() > 0 ? "**" + passage.number() + ".** " : "").append(words);
        case LINE -> text.append("> ").append(words);
        case ENTRY -> text.append("- ").append(words);
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static String words(List<Piece> pieces) {
    StringBuilder text = new StringBuilder();
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Words words) {
        escape(words.text(), text);
      } else {
        text.append('`').append(TextForm.formula(((Piece.Formula) piece).tokens())).append('`');
      }
    }
    return text.toString();
  }

  private static void escape(String words, StringBuilder text) {
    for (int k = 0; k < words.length(); k++) {
      char c = words.charAt(k);
      text.append(SPECIAL.indexOf(c) >= 0 ? "\\" : "").append(c);
    }
  }
}
