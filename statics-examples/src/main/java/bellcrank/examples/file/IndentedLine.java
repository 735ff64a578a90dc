package bellcrank.examples.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks at the beginning of a line of which the parser complains. */
final class IndentedLine {

  /** A key in front of its colon, with no sign in it that means something to YAML. */
  private static final Pattern KEY =
      Pattern.compile("\\s*+[^\\s\\[\\]{},:\"'#-][^\\[\\]{},:\"'#]*+");

  private static final Pattern INDENTATION = Pattern.compile("[ \t]*+");

  private IndentedLine() {}

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
