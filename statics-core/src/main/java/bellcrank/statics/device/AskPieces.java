package bellcrank.statics.device;

import static bellcrank.statics.device.AskText.EN_DASH;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/** Reads names, lists, lengths and lines in the text of an ask. */
final class AskPieces {

  private final String text;
  private final AskCursor cursor;

  AskPieces(String text, AskCursor cursor) {
    this.text = text;
    this.cursor = cursor;
  }

  List<String> list(String head) {
    cursor.take('(');
    List<String> names = new ArrayList<>();
    do {
      String name = cursor.atQuote() ? quoted() : cursor.upTo(",()\"");
      if (name.isEmpty()) {
        throw fail(head, "names with commas between them, as in " + head + "(a, b)");
      }
      names.add(checkedName(name));
    } while (cursor.take(','));
    if (!cursor.take(')')) {
      throw fail(
          head, "a comma or a closing bracket after " + Check.quote(names.get(names.size() - 1)));
    }
    return names;
  }

  private double length() {
    String raw = cursor.words(Set.of("of"));
    if (!cursor.peekWord().equals("of")) {
      throw fail(
          ("at " + raw).strip(),
          "a place on a bar: at LENGTH of A–B; a name with the word at in it in double quotes");
    }
    cursor.word();
    try {
      double metres = Quantity.parse(raw, Dimension.LENGTH).si();
      if (metres < 0) {
        throw fail(raw, "a length of 0 or more");
      }
      return metres;
    } catch (QuantityException e) {
      throw fail(raw, "a length; " + e.getMessage());
    }
  }

  /** What follows {@code at} or {@code along}. */
  Stretch stretch(String ending, Set<String> stops) {
    OptionalDouble distance =
        ending.equals("at") ? OptionalDouble.of(length()) : OptionalDouble.empty();
    String word = ending.equals("at") ? "of" : ending;
    String wanted = "two points: A–B with an en dash, or A to B";
    String start = cursor.atQuote() ? quoted() : cursor.upToSeparator();
    if (start.isEmpty() || !cursor.takeSeparator()) {
      throw fail(word, wanted);
    }
    boolean quoted = cursor.atQuote();
    String end = name(word, wanted, stops);
    if (!quoted && (end.indexOf(EN_DASH) >= 0 || AskCursor.hasInnerWord(end, "to"))) {
      throw fail(end, "one en dash or to; a point's name with either in it in double quotes");
    }
    checkedName(start);
    return checked(end, () -> new Stretch(start, end, distance));
  }

  /** What follows {@code just}: a side and a place. */
  Stretch besides(Set<String> stops) {
    String word = cursor.peekWord();
    for (Side side : Side.values()) {
      if (side.word().equals(word)) {
        cursor.word();
        Stretch place = stretch("at", stops);
        return new Stretch(place.start(), place.end(), place.distance(), Optional.of(side));
      }
    }
    throw fail(
        "just",
        "just before LENGTH of A–B, or just after; a name with the word just in it in double"
            + " quotes");
  }

  String name(String after, String wanted, Set<String> stops) {
    if (cursor.atEnd()) {
      throw fail(after, wanted + " after " + after);
    }
    if (cursor.atQuote()) {
      return checkedName(quoted());
    }
    String raw = cursor.words(stops);
    int dot = raw.lastIndexOf('.');
    if (dot >= 0 && Measure.find(raw.substring(dot + 1).strip()).isPresent()) {
      throw fail(raw, "the measure before " + after + ", or the name in double quotes");
    }
    return checkedName(raw);
  }

  String quoted() {
    return cursor.quoted().orElseThrow(() -> fail("\"", "a closing double quote"));
  }

  private String checkedName(String name) {
    return checked(name, () -> Check.name("ask", name));
  }

  /** Turns a refusal by a part of the ask into one of the text. */
  <T> T checked(String piece, Supplier<T> part) {
    try {
      return part.get();
    } catch (ModelException e) {
      throw fail(piece, e.problems().get(0).wanted());
    }
  }

  ModelException fail(String piece, String wanted) {
    return new ModelException("ask", piece, text, wanted);
  }
}
