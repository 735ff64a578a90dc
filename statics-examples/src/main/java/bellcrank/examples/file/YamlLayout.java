package bellcrank.examples.file;

import java.util.List;

/** Lays the sections of a file out in lines. */
final class YamlLayout {

  private static final int WIDTH = 110;

  /** Longest key without a leading question mark; YAML's own bound is 1024. */
  private static final int LONGEST_KEY = 900;

  private final StringBuilder lines = new StringBuilder();

  YamlLayout() {}

  /** Writes a key with a value in flow style. */
  void field(String key, String flow) {
    line("", key, flow);
  }

  /** Writes a key below which others stand. */
  void section(String key) {
    lines.append(key).append(":\n");
  }

  /** Writes a key of a section, with a value in flow style. */
  void entry(String key, String flow) {
    line("  ", YamlScalar.of(key), flow);
  }

  private void line(String indent, String key, String flow) {
    String head = indent + key + ": ";
    if (key.length() > LONGEST_KEY) {
      lines.append(indent).append("? ").append(key).append('\n');
      head = indent + ": ";
    }
    wrap(head, indent + "    ", List.of(flow.split("\n", -1)), ' ');
  }

  /** Writes a free text. */
  void text(String key, String text) {
    boolean showable = text.codePoints().allMatch(c -> c == '\n' || YamlScalar.isShowable(c));
    boolean oneLine = text.indexOf('\n') < 0;
    if (oneLine && (!showable || text.length() < WIDTH - 20)) {
      field(key, isPlainInBlock(text) ? text : YamlScalar.of(text));
    } else if (!showable || !isEvenlySpaced(text)) {
      field(key, YamlScalar.doubleQuoted(text));
    } else if (oneLine) {
      lines.append(key).append(": >-\n");
      wrap("  ", "  ", List.of(text.split(" ", -1)), ' ');
    } else {
      lines.append(key).append(": |-\n");
      for (String line : text.split("\n", -1)) {
        lines.append(line.isEmpty() ? "" : "  ").append(line).append('\n');
      }
    }
  }

  /** Whether no line has blanks at its ends or several in a row, which folding would change. */
  private static boolean isEvenlySpaced(String text) {
    return text.lines().allMatch(line -> line.equals(line.strip()) && !line.contains("  "))
        && text.codePoints().noneMatch(c -> c != ' ' && c != '\n' && Character.isWhitespace(c));
  }

  /** Whether a text outside of flow style needs no quotes though it would need them inside. */
  private static boolean isPlainInBlock(String text) {
    return text.indexOf(' ') > 0
        && Character.isLetter(text.codePointAt(0))
        && text.codePoints().allMatch(YamlScalar::isShowable)
        && !text.contains(": ")
        && !text.contains(" #")
        && !text.endsWith(":")
        && text.codePoints().noneMatch(c -> c != ' ' && Character.isWhitespace(c));
  }

  private void wrap(String head, String indent, List<String> pieces, char glue) {
    lines.append(head);
    int column = head.length();
    boolean first = true;
    for (String piece : pieces) {
      if (!first && column + 1 + piece.length() > WIDTH) {
        lines.append('\n').append(indent);
        column = indent.length();
      } else if (!first) {
        lines.append(glue);
        column++;
      }
      lines.append(piece);
      column += piece.length();
      first = false;
    }
    lines.append('\n');
  }

  String written() {
    return lines.toString();
  }
}
