package bellcrank.examples.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Builds the located tree of one YAML document. Anchors, aliases and tags are refused: a device
 * file has no use for them, and repeated aliases could blow a small file up without bound.
 */
final class YamlTree {

  /** Bound on nesting; a device file needs 6. It also bounds the recursion here. */
  static final int DEEPEST = 30;

  /** Bound on scalars, sequences and mappings. */
  static final int MOST_NODES = 20_000;

  private static final YAMLFactory FACTORY = new YAMLFactory();

  private final JsonParser parser;
  private final int[] characters;
  private final Problems problems;
  private final Deque<String> way = new ArrayDeque<>();
  private int nodes;

  private YamlTree(JsonParser parser, int[] characters, Problems problems) {
    this.parser = parser;
    this.characters = characters;
    this.problems = problems;
  }

  /** The tree of a text; empty if its form is broken, which is then reported. */
  static Optional<Node> of(String text, Problems problems) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new YamlTree(parser, text.codePoints().toArray(), problems).document();
    } catch (GivenUp e) {
      return Optional.empty();
    } catch (IOException e) {
      SyntaxProblem.report(e, text, problems);
      return Optional.empty();
    } catch (RuntimeException e) {
      // the parser's own slips on hostile texts are the text's fault as far as a user can tell
      problems.add(Mark.START, Fields.TOP, "what is no YAML", "keys with values");
      return Optional.empty();
    }
  }

  private Optional<Node> document() throws IOException {
    JsonToken token = parser.nextToken();
    if (token == null) {
      problems.add(Mark.START, Fields.TOP, "nothing", "a mapping that begins with format: 1");
      return Optional.empty();
    }
    Node root = node(token, 1);
    if (parser.nextToken() != null) {
      problems.add(mark(), Fields.TOP, "a second document", "one document in a file");
      return Optional.empty();
    }
    return Optional.of(root);
  }

  private Node node(JsonToken token, int depth) throws IOException {
    Mark mark = mark();
    if (++nodes > MOST_NODES) {
      throw giveUp(mark, "more than " + MOST_NODES + " values", "a smaller file");
    }
    if (depth > DEEPEST) {
      throw giveUp(mark, "more than " + DEEPEST + " levels", "fewer levels within one another");
    }
    boolean plain = plain(mark);
    if (token == JsonToken.START_ARRAY) {
      return items(mark, depth);
    }
    if (token == JsonToken.START_OBJECT) {
      return keys(mark, depth);
    }
    return plain ? new Node.Text(mark, parser.getText()) : new Node.Unreadable(mark);
  }

  private Node items(Mark mark, int depth) throws IOException {
    List<Node> items = new ArrayList<>();
    for (JsonToken next = next(); next != JsonToken.END_ARRAY; next = next()) {
      items.add(node(next, depth + 1));
    }
    return new Node.Items(mark, List.copyOf(items));
  }

  private Node keys(Mark mark, int depth) throws IOException {
    Map<String, Mark> seen = new HashMap<>();
    List<Node.Entry> entries = new ArrayList<>();
    for (JsonToken next = next(); next != JsonToken.END_OBJECT; next = next()) {
      Mark keyMark = mark();
      String key = parser.currentName();
      plain(keyMark);
      way.addLast(Excerpt.cut(key));
      Node value = node(next(), depth + 1);
      Mark first = seen.putIfAbsent(key, keyMark);
      if (first == null) {
        entries.add(new Node.Entry(keyMark, key, value));
      } else {
        problems.add(
            keyMark,
            String.join(Spot.STEP, way),
            "the key " + Excerpt.quoted(key) + " again",
            "each key once; it stands in line " + first.line() + " already");
      }
      way.removeLast();
    }
    return new Node.Keys(mark, List.copyOf(entries));
  }

  private JsonToken next() throws IOException {
    JsonToken token = parser.nextToken();
    if (token == null) {
      throw giveUp(mark(), "the end of the file", "the rest of what was begun");
    }
    return token;
  }

  /** Whether a node has no anchor, alias or tag; these begin with signs that no plain text has. */
  private boolean plain(Mark mark) {
    JsonLocation location = parser.currentTokenLocation();
    int at = (int) location.getCharOffset();
    int sign = at >= 0 && at < characters.length ? characters[at] : ' ';
    String kind =
        switch (sign) {
          case '&' -> "an anchor (&)";
          case '*' -> "an alias (*)";
          case '!' -> "a tag (!)";
          default -> "";
        };
    if (!kind.isEmpty()) {
      problems.add(
          mark, Fields.TOP, kind, "the value itself; a text that begins so is put in quotes");
    }
    return kind.isEmpty();
  }

  private Mark mark() {
    JsonLocation location = parser.currentTokenLocation();
    return new Mark(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  private GivenUp giveUp(Mark mark, String found, String wanted) {
    problems.add(mark, Fields.TOP, found, wanted);
    return new GivenUp();
  }

  /** Leaves the recursion after the problem was reported. */
  private static final class GivenUp extends RuntimeException {
    private static final long serialVersionUID = 1L;

    GivenUp() {
      super("reported", null, false, false);
    }
  }
}
