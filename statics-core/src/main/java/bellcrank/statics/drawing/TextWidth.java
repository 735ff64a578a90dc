package bellcrank.statics.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Widths of text, on the large side for any usual sans-serif type; widths in ems are from memory of
 * such types, rounded up.
 */
final class TextWidth {

  /** Size of the letters on the sheet. */
  static final double EM = 13;

  /** Distance of lines. */
  static final double LINE = 16;

  /** More characters than this are broken over lines. */
  private static final int LONGEST = 24;

  private TextWidth() {}

  static double of(String text) {
    return EM * text.codePoints().mapToDouble(TextWidth::ems).sum();
  }

  private static double ems(int c) {
    if (c == ' ' || "ijl.,:;'|!()[]/".indexOf(c) >= 0) {
      return 0.42;
    }
    if ("mwMW@%".indexOf(c) >= 0) {
      return 1.05;
    }
    if (c < 128) {
      return Character.isUpperCase(c) ? 0.8 : 0.68;
    }
    int kind = Character.getType(c);
    if (kind == Character.NON_SPACING_MARK || kind == Character.ENCLOSING_MARK) {
      return 0.3;
    }
    // European letters and signs are as wide as the plain ones; anything else may be a full square
    return c < 0x370 || (c >= 0x2000 && c < 0x2200) ? 0.85 : 1.2;
  }

  /** A name broken into short lines, at blanks where there are some. */
  static List<String> lines(String text) {
    return lines(text, LONGEST);
  }

  /** A text broken into lines of at most so many characters. */
  static List<String> lines(String text, int longest) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int length = 0;
    for (String word : text.split(" ", -1)) {
      int[] points = word.codePoints().toArray();
      if (length > 0 && length + 1 + points.length > longest) {
        lines.add(line.toString());
        line.setLength(0);
        length = 0;
      }
      if (length > 0) {
        line.append(' ');
        length++;
      }
      for (int point : points) {
        if (length >= longest && !isMark(point)) {
          lines.add(line.toString());
          line.setLength(0);
          length = 0;
        }
        line.appendCodePoint(point);
        length++;
      }
    }
    lines.add(line.toString());
    return lines;
  }

  private static boolean isMark(int c) {
    return Character.getType(c) == Character.NON_SPACING_MARK;
  }
}
