package bellcrank.examples.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * A table of text in columns as wide as their widest cell. Where that is too wide for the page, the
 * widest columns of words are narrowed and their cells broken into lines, words themselves only if
 * there is no other way.
 */
final class Table {

  /** What a column holds. */
  enum Kind {
    /** Words, at the left, broken where needed. */
    WORDS,
    /** Numbers, at the right, never broken; their heads are where there is no room. */
    NUMBERS
  }

  private static final int GAP = 2;
  private static final int NARROWEST = 7;

  private final List<String> heads = new ArrayList<>();
  private final List<Kind> kinds = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a column. */
  Table column(String head, Kind kind) {
    heads.add(head);
    kinds.add(kind);
    return this;
  }

  /** Adds a row with a cell for each column. */
  void row(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  /** The heads of its columns. */
  List<String> heads() {
    return List.copyOf(heads);
  }

  /** What its columns hold. */
  List<Kind> kinds() {
    return List.copyOf(kinds);
  }

  /** Its rows, each with a cell for each column. */
  List<List<String>> rows() {
    return List.copyOf(rows);
  }

  /** The lines of the table. */
  List<String> lines(int page) {
    int[] widths = widths(page);
    List<String> lines = new ArrayList<>();
    add(lines, heads, widths, true);
    rows.forEach(row -> add(lines, row, widths, false));
    return lines;
  }

  private int[] widths(int page) {
    int[] widths = new int[heads.size()];
    int total = GAP * (widths.length - 1);
    for (int column = 0; column < widths.length; column++) {
      widths[column] = Wrapping.length(heads.get(column));
      for (List<String> row : rows) {
        widths[column] = Math.max(widths[column], Wrapping.length(row.get(column)));
      }
      total += widths[column];
    }
    int over = total - page;
    over = narrow(widths, Kind.WORDS, this::longestWord, over);
    over = narrow(widths, Kind.NUMBERS, this::longestNumber, over);
    narrow(widths, Kind.WORDS, column -> NARROWEST, over);
    return widths;
  }

  /** Takes columns from the widest ones, none below its least width; what is left over. */
  private int narrow(int[] widths, Kind kind, IntUnaryOperator least, int columns) {
    int over = columns;
    while (over > 0) {
      int widest = -1;
      for (int column = 0; column < widths.length; column++) {
        boolean gives = kinds.get(column) == kind && widths[column] > least.applyAsInt(column);
        if (gives && (widest < 0 || widths[column] > widths[widest])) {
          widest = column;
        }
      }
      if (widest < 0) {
        break;
      }
      widths[widest]--;
      over--;
    }
    return over;
  }

  /** Characters of the longest word in a column. */
  private int longestWord(int column) {
    int longest = Math.max(NARROWEST, Wrapping.longestWord(heads.get(column)));
    for (List<String> row : rows) {
      longest = Math.max(longest, Wrapping.longestWord(row.get(column)));
    }
    return longest;
  }

  /** Characters of the longest number in a column, or of a word in its head. */
  private int longestNumber(int column) {
    int longest = Math.max(NARROWEST, Wrapping.longestWord(heads.get(column)));
    for (List<String> row : rows) {
      longest = Math.max(longest, Wrapping.length(row.get(column)));
    }
    return longest;
  }

  private void add(List<String> lines, List<String> cells, int[] widths, boolean isHead) {
    List<List<String>> broken = new ArrayList<>();
    int height = 1;
    for (int column = 0; column < widths.length; column++) {
      List<String> cell =
          kinds.get(column) == Kind.WORDS || isHead
              ? Wrapping.lines(cells.get(column), widths[column])
              : List.of(cells.get(column).replace(Wrapping.UNBROKEN, ' '));
      broken.add(cell);
      height = Math.max(height, cell.size());
    }
    for (int level = 0; level < height; level++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < widths.length; column++) {
        String piece = level < broken.get(column).size() ? broken.get(column).get(level) : "";
        String room = " ".repeat(widths[column] - Wrapping.length(piece));
        line.append(column > 0 ? " ".repeat(GAP) : "");
        line.append(kinds.get(column) == Kind.WORDS ? piece + room : room + piece);
      }
      lines.add(line.toString());
    }
  }
}
