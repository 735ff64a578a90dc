package bellcrank.examples.file;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Words what is wrong with the YAML of a file in the way of all other problems. */
final class SyntaxProblem {

  /** Part of the parser's complaint, what it means, and what helps. */
  private record Wording(String sign, String found, String wanted) {}

  private static final Wording COLON =
      new Wording(
          "mapping values are not allowed here",
          "a colon in an unexpected place",
          "each key on a line of its own, and quotes round a text that holds \": \"");

  private static final Wording TOO_DEEP =
      new Wording(
          "", "a key further in than the line above it", "the indentation of the keys beside it");

  private static final Wording TAB = new Wording("", "a tab", "blanks, not tabs, for indentation");

  private static final Wording NO_KEY =
      new Wording(
          "could not find expected ':'",
          "a line that is no key",
          "a key followed by a colon and a blank");

  private static final Wording MISFIT =
      new Wording(
          "expected <block end>",
          "a line that does not fit",
          "the same indentation as the keys or items that go with it");

  private static final Wording OPEN_LIST =
      new Wording("expected ',' or ']'", "a list without its end", "a comma or ]");

  private static final Wording OPEN_MAPPING =
      new Wording("expected ',' or '}'", "a mapping without its end", "a comma or }");

  /** Complaints that a badly written key brings about, often one line further down. */
  private static final Set<Wording> OF_KEYS = Set.of(COLON, TOO_DEEP, NO_KEY, MISFIT, OPEN_MAPPING);

  private static final Wording NO_COLON =
      new Wording(
          "", "a key without a colon", "a colon and a blank behind the key, as in a: [0, 1]");

  private static final Wording NO_BLANK =
      new Wording(
          "", "a colon without a blank", "a blank behind the colon of a key, as in a: [0, 1]");

  private static final List<Wording> WORDINGS =
      List.of(
          new Wording("field name", "a list, mapping or alias as a key", "a name as a key"),
          new Wording(
              "\\t(TAB)", "a tab", "a blank in its place: a tab can stand inside quotes only"),
          new Wording(
              "that cannot start any token",
              "a sign that cannot begin a value",
              "a value; a text that begins with @, ` or % is put in quotes"),
          COLON,
          NO_KEY,
          MISFIT,
          OPEN_LIST,
          OPEN_MAPPING,
          new Wording("unexpected end of stream", "the end of the file", "the closing quote"),
          new Wording(
              "unexpected document separator", "--- inside quotes", "the closing quote before it"),
          new Wording("escape", "an unknown sign behind \\", "\\\\ for a backslash in quotes"),
          new Wording("alphabetic or numeric", "a bare & or *", "a text that begins so in quotes"),
          new Wording(
              "block sequence entries",
              "a dash in an unexpected place",
              "a line of its" + " own for each item"),
          new Wording(
              "block scalar", "a | or > with more behind it", "the text on the lines below"),
          new Wording(
              "indentation",
              "a line that does not fit",
              "the indentation of the lines" + " before"),
          new Wording("directive", "a line that begins with %", "quotes round such a text"),
          new Wording("<document start>", "more text behind the document", "one mapping in a file"),
          new Wording("tag", "a tag (!)", "the value itself; a text that begins so in quotes"),
          new Wording("node content", "a sign that begins no value", "a value"));

  /** A complaint and its place. */
  private record Placed(Wording wording, Mark place) {}

  private SyntaxProblem() {}

  static void report(IOException thrown, String text, Problems problems) {
    Mark place = Mark.START;
    String complaint = String.valueOf(thrown.getMessage());
    if (thrown instanceof JacksonException parsing) {
      JsonLocation location = parsing.getLocation();
      if (location != null) {
        place = place(location.getLineNr(), location.getColumnNr());
      }
      complaint = String.valueOf(parsing.getOriginalMessage());
    }
    if (thrown.getCause() instanceof MarkedYAMLException yaml) {
      org.yaml.snakeyaml.error.Mark mark = yaml.getProblemMark();
      if (mark != null) {
        place = place(mark.getLine() + 1, mark.getColumn() + 1);
      }
      complaint = yaml.getProblem() + " " + yaml.getContext();
    }
    Wording wording = wording(complaint);
    if (wording.equals(COLON) && IndentedLine.beginsWithKey(text, place)) {
      wording = TOO_DEEP;
    }
    Optional<Placed> cause = cause(wording, text, place);
    if (cause.isPresent()) {
      wording = cause.get().wording();
      place = cause.get().place();
    }
    String begun =
        wording.equals(OPEN_LIST) || wording.equals(OPEN_MAPPING) ? begun(thrown, place) : "";
    problems.addUnlessReported(place, Fields.TOP, wording.found() + begun, wording.wanted());
  }

  /** What brought a complaint about, if the line of it or the one before it shows that. */
  private static Optional<Placed> cause(Wording wording, String text, Mark place) {
    Optional<Placed> tab = IndentedLine.tab(text, place).map(at -> new Placed(TAB, at));
    if (tab.isPresent() || !OF_KEYS.contains(wording)) {
      return tab;
    }
    return IndentedLine.withoutColon(text, place)
        .map(at -> new Placed(NO_COLON, at))
        .or(() -> IndentedLine.withoutBlank(text, place).map(at -> new Placed(NO_BLANK, at)));
  }

  /** In which line a list or mapping begins, if that is another one. */
  private static String begun(IOException thrown, Mark place) {
    if (thrown.getCause() instanceof MarkedYAMLException yaml
        && yaml.getContextMark() != null
        && yaml.getContextMark().getLine() + 1 != place.line()) {
      return ", begun in line " + (yaml.getContextMark().getLine() + 1);
    }
    return "";
  }

  private static Wording wording(String complaint) {
    return WORDINGS.stream()
        .filter(one -> complaint.contains(one.sign()))
        .findFirst()
        .orElse(new Wording("", "what is no YAML", "keys with values, one on each line"));
  }

  private static Mark place(int line, int column) {
    return new Mark(Math.max(1, line), Math.max(1, column));
  }
}
