package bellcrank.statics.harness;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells set below one another, the first one a head. */
final class TextTable {

  private static final String INDENT = "  ";
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();

  TextTable row(String... cells) {
    rows.add(List.of(cells));
    return this;
  }

  /**
   * The lines, each column as wide as it needs; a column with nothing below its head is left out.
   */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(INDENT);
      for (int i = 0; i < row.size(); i++) {
        if (isEmpty(i)) {
          continue;
        }
        line.append(row.get(i)).append(" ".repeat(width(i) - length(row.get(i)))).append(GAP);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private boolean isEmpty(int column) {
    return rows.stream().skip(1).allMatch(row -> row.get(column).isEmpty());
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
