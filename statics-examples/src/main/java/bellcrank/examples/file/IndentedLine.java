package bellcrank.examples.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks at the beginning of a line of which the parser complains, or of the one before it. */
final class IndentedLine {

  /** A key in front of its colon, with no sign in it that means something to YAML. */
  private static final Pattern KEY =
      Pattern.compile("\\s*+[^\\s\\[\\]{},:\"'#-][^\\[\\]{},:\"'#]*+");

  private static final Pattern INDENTATION = Pattern.compile("[ \t]*+");

  /** A key that is followed by its value at once, without a colon. */
  private static final Pattern NO_COLON = Pattern.compile(KEY.pattern() + "(?<=\\s)[\\[{]");

  /** A key whose colon is followed by its value at once, without a blank. */
  private static final Pattern NO_BLANK = Pattern.compile(KEY.pattern() + ":[^\\s/:]");

  private IndentedLine() {}

  /** Where a colon is missing between a key and its list or mapping. */
  static Optional<Mark> withoutColon(String text, Mark complaint) {
    return end(NO_COLON, text, complaint);
  }

  /** Where a blank is missing behind the colon of a key. */
  static Optional<Mark> withoutBlank(String text, Mark complaint) {
    return end(NO_BLANK, text, complaint);
  }

  /** The last sign that a pattern takes of the line of a complaint or the one before it. */
  private static Optional<Mark> end(Pattern pattern, String text, Mark complaint) {
    List<String> lines = text.lines().toList();
    for (int line = complaint.line(); line >= Math.max(1, complaint.line() - 1); line--) {
      if (line <= lines.size()) {
        Matcher matcher = pattern.matcher(lines.get(line - 1));
        if (matcher.lookingAt()) {
          return Optional.of(new Mark(line, matcher.end()));
        }
      }
    }
    return Optional.empty();
  }

  /** Where the tab is, if the line of a complaint or the one before it is indented with one. */
  static Optional<Mark> tab(String text, Mark complaint) {
    List<String> lines = text.lines().toList();
    for (int line = complaint.line(); line >= Math.max(1, complaint.line() - 1); line--) {
      if (line <= lines.size()) {
        Matcher indentation = INDENTATION.matcher(lines.get(line - 1));
        int tab = indentation.lookingAt() ? indentation.group().indexOf('\t') : -1;
        if (tab >= 0) {
          return Optional.of(new Mark(line, tab + 1));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether nothing but blanks and a key stand before a colon, so that it is the line's own. */
  static boolean beginsWithKey(String text, Mark colon) {
    List<String> lines = text.lines().toList();
    if (colon.line() > lines.size()) {
      return false;
    }
    String line = lines.get(colon.line() - 1);
    int end = Math.min(colon.column() - 1, line.length());
    return KEY.matcher(line.substring(0, end)).matches();
  }
}
