package bellcrank.examples.file;

/**
 * Shows pieces of a file inside a message: cut to a bearable length, without control characters.
 */
final class Excerpt {

  private static final int LONGEST = 60;
  private static final int LONGEST_PHRASE = 1000;

  private Excerpt() {}

  /** The text in double quotes, or words for an empty one. */
  static String quoted(String text) {
    return text.isEmpty() ? "nothing" : '"' + cut(text) + '"';
  }

  /** The text on one line, cut behind 60 characters. */
  static String cut(String text) {
    return cut(text, LONGEST);
  }

  /** A whole phrase on one line; only one that quotes a very long text is cut. */
  static String phrase(String text) {
    return cut(text, LONGEST_PHRASE);
  }

  private static String cut(String text, int longest) {
    int[] shown =
        text.codePoints()
            .limit(longest)
            .map(c -> c == '\n' || c == '\t' ? ' ' : c)
            .map(c -> isShowable(c) ? c : '\uFFFD')
            .toArray();
    boolean all = text.length() <= longest || text.codePointCount(0, text.length()) <= longest;
    return new String(shown, 0, shown.length) + (all ? "" : "…");
  }

  /** Writes a piece in flow style; stops once there is more than a message will show. */
  static void write(Node node, StringBuilder to) {
    if (node instanceof Node.Text text) {
      to.append(text.text(), 0, Math.min(text.text().length(), 2 * LONGEST + 2));
    } else if (node instanceof Node.Items items) {
      to.append('[');
      String separator = "";
      for (Node item : items.items()) {
        if (to.length() > 2 * LONGEST) {
          return;
        }
        to.append(separator);
        write(item, to);
        separator = ", ";
      }
      to.append(']');
    } else if (node instanceof Node.Keys keys) {
      to.append('{');
      String separator = "";
      for (Node.Entry entry : keys.entries()) {
        if (to.length() > 2 * LONGEST) {
          return;
        }
        to.append(separator).append(entry.key()).append(": ");
        write(entry.value(), to);
        separator = ", ";
      }
      to.append('}');
    }
  }

  private static boolean isShowable(int c) {
    int type = Character.getType(c);
    return !Character.isISOControl(c)
        && type != Character.SURROGATE
        && type != Character.FORMAT
        && type != Character.UNASSIGNED
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
