package bellcrank.statics.explain;

import java.util.List;

/** Paragraphs as LaTeX. */
final class LatexForm {

  private LatexForm() {}

  static String of(List<Passage> passages) {
    StringBuilder text = new StringBuilder();
    boolean list = false;
    for (Passage passage : passages) {
      boolean entry = passage.kind() == Passage.Kind.ENTRY;
      if (entry != list) {
        text.append(entry ? "\\begin{itemize}\n" : "\\end{itemize}\n");
        list = entry;
      }
      write(passage, text);
    }
    return text.append(list ? "\\end{itemize}\n" : "").toString();
  }

  private static void write(Passage passage, StringBuilder text) {
    switch (passage.kind()) {
      case HEAD -> text.append("\\subsection*{").append(words(passage.pieces())).append("}\n");
      case SENTENCE ->
          text.append("\n\\noindent ")
              .append(passage.number() > 0 ? "\\textbf{" + passage.number() + ".} " : "")
              .append(words(passage.pieces()))
              .append('\n');
      case LINE -> {
        text.append("\\[ ");
        for (Piece piece : passage.pieces()) {
          text.append(
              piece instanceof Piece.Words words
                  ? "\\quad\\text{" + escaped(words.text()) + "}"
                  : formula(((Piece.Formula) piece).tokens()));
        }
        text.append(" \\]\n");
      }
      case ENTRY -> text.append("\\item ").append(words(passage.pieces())).append('\n');
    }
  }

  private static String words(List<Piece> pieces) {
    StringBuilder text = new StringBuilder();
    for (Piece piece : pieces) {
      text.append(
          piece instanceof Piece.Words words
              ? escaped(words.text())
              : "$" + formula(((Piece.Formula) piece).tokens()) + "$");
    }
    return text.toString();
  }

  private static String formula(List<Piece.Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (Piece.Token token : tokens) {
      if (token instanceof Piece.Sign sign) {
        text.append(
            switch (sign.sign()) {
              case "−" -> sign.leading() ? "-" : " - ";
              case "·" -> " \\cdot ";
              default -> " " + sign.sign() + " ";
            });
      } else if (token instanceof Piece.Letter letter) {
        text.append(symbol(letter.symbol()));
      } else if (token instanceof Piece.Figure figure) {
        String number =
            number(figure.number())
                + (figure.unit().isEmpty()
                    ? ""
                    : "\\,\\mathrm{" + mathematical(figure.unit()) + "}");
        text.append(figure.bracketed() ? "(" + number + ")" : number);
      }
    }
    return text.toString();
  }

  private static String symbol(Symbol symbol) {
    String main =
        symbol.main().length() == 1
            ? symbol.main()
            : "\\mathrm{" + mathematical(symbol.main()) + "}";
    return symbol.index().isEmpty()
        ? main
        : main + "_{\\mathrm{" + mathematical(symbol.index()) + "}}";
  }

  private static String number(String number) {
    int exponent = number.indexOf('e');
    String plain = number.replace("−", "-");
    return exponent < 0
        ? plain
        : plain.substring(0, exponent) + " \\times 10^{" + plain.substring(exponent + 1) + "}";
  }

  private static String mathematical(String text) {
    return text.replace("_", "\\_").replace("·", "{\\cdot}").replace("²", "^2");
  }

  private static String escaped(String words) {
    StringBuilder text = new StringBuilder();
    for (int k = 0; k < words.length(); k++) {
      char c = words.charAt(k);
      text.append(
          switch (c) {
            case '\\' -> "\\textbackslash{}";
            case '^' -> "\\textasciicircum{}";
            case '~' -> "\\textasciitilde{}";
            case '{', '}', '$', '&', '#', '%', '_' -> "\\" + c;
            case '−' -> "$-$";
            case '·' -> "$\\cdot$";
            case '°' -> "$^{\\circ}$";
            case 'μ' -> "$\\mu$";
            case 'β' -> "$\\beta$";
            case 'α' -> "$\\alpha$";
            case 'φ' -> "$\\varphi$";
            case '²' -> "$^2$";
            default -> String.valueOf(c);
          });
    }
    return text.toString();
  }
}
