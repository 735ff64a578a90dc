package bellcrank.examples.report;

/** A page of text that is at most 80 characters wide. */
final class Page {

  /** Characters in a line. */
  static final int WIDTH = 80;

  private static final int INDENT = 2;

  private final StringBuilder text = new StringBuilder();

  /** A title, underlined, with an empty line before it unless it is the first. */
  void title(String words, char underline) {
    gap();
    int longest = 0;
    for (String line : Wrapping.lines(words, WIDTH)) {
      line(line);
      longest = Math.max(longest, Wrapping.length(line));
    }
    line(String.valueOf(underline).repeat(longest));
  }

  /** The head of a section, after an empty line. */
  void heading(String words) {
    gap();
    paragraph(words);
  }

  /** A paragraph that begins at the left. */
  void paragraph(String words) {
    Wrapping.lines(words, WIDTH).forEach(this::line);
  }

  /** One entry below a heading; its further lines are set in. */
  void item(String words) {
    String indent = " ".repeat(INDENT);
    for (String line : Wrapping.lines(words, WIDTH - 2 * INDENT)) {
      line(indent + line);
      indent = " ".repeat(2 * INDENT);
    }
  }

  /** One entry below an item, with a dash. */
  void subitem(String words) {
    String indent = " ".repeat(2 * INDENT) + "- ";
    for (String line : Wrapping.lines(words, WIDTH - indent.length())) {
      line(indent + line);
      indent = " ".repeat(indent.length());
    }
  }

  /** A table below a heading. */
  void table(Table table) {
    for (String line : table.lines(WIDTH - INDENT)) {
      line(" ".repeat(INDENT) + line);
    }
  }

  /** An empty line, unless the page is empty. */
  void gap() {
    if (!text.isEmpty()) {
      text.append('\n');
    }
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
