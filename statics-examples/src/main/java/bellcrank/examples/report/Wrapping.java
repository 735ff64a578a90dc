package bellcrank.examples.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines of a bounded number of characters. */
final class Wrapping {

  /** A blank at which no line ends; it is written as a plain one. */
  static final char UNBROKEN = '\u00A0';

  /** A number in front of a unit: they stay on one line. */
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<=\\d)\\s+(?=(?:%|°|deg|rad|[kMG]?Pa|psi|ksi|kg|lb|[cmk]?m|ft|(?:[kM]?N|lbf)"
              + "(?:[·/](?:mm?|ft|in))?)(?:[^\\p{L}\\d·/]|$))");

  private Wrapping() {}

  /** Number of characters as a reader counts them. */
  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** What lines are made of; a number and its unit are one word. */
  private static String[] words(String text) {
    String kept = QUANTITY.matcher(text.strip()).replaceAll(String.valueOf(UNBROKEN));
    return kept.split("\\s+", -1);
  }

  /** Number of characters of the longest word, which is what no line has to break. */
  static int longestWord(String text) {
    int longest = 0;
    for (String word : words(text)) {
      longest = Math.max(longest, length(word));
    }
    return longest;
  }

  /** Lines of at most {@code width} characters; a longer word is cut. At least one line. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(text)) {
      String rest = word;
      if (length(line.toString()) + 1 + length(rest) > width && !line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (length(rest) > width) {
        int cut = rest.offsetByCodePoints(0, width);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    lines.replaceAll(one -> one.replace(UNBROKEN, ' '));
    return lines;
  }
}
