package bellcrank.examples.file;

/**
 * Where something begins in a text.
 *
 * @param line line, from 1
 * @param column column in characters, from 1
 */
record Mark(int line, int column) implements Comparable<Mark> {

  /** The beginning of the text. */
  static final Mark START = new Mark(1, 1);

  @Override
  public int compareTo(Mark other) {
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }
}
