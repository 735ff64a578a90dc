package bellcrank.examples.file;

import java.util.List;

/**
 * A piece of a YAML text with its place. Scalars stay text: {@code y}, {@code on} are names here.
 */
sealed interface Node {

  /** Where it begins. */
  Mark mark();

  /** A scalar as written, quotes and folds resolved. */
  record Text(Mark mark, String text) implements Node {}

  /** A sequence. */
  record Items(Mark mark, List<Node> items) implements Node {}

  /** A mapping; its keys differ. */
  record Keys(Mark mark, List<Entry> entries) implements Node {}

  /** What has been reported already and is passed over in silence. */
  record Unreadable(Mark mark) implements Node {}

  /** A key with its value; the mark is the key's. */
  record Entry(Mark mark, String key, Node value) {}

  /** The piece as a message shows it: short, on one line. */
  default String excerpt() {
    if (this instanceof Text text) {
      return Excerpt.quoted(text.text());
    }
    StringBuilder written = new StringBuilder();
    Excerpt.write(this, written);
    return Excerpt.cut(written.toString());
  }
}
