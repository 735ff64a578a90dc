package bellcrank.statics.device;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in the text of an ask; it steps over blanks before anything it looks at. */
final class AskCursor {

  private final String text;
  private int at;

  AskCursor(String text) {
    this.text = text;
  }

  private void blanks() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private int endOfWord(int start) {
    int end = start;
    while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
      end++;
    }
    return end;
  }

  boolean atEnd() {
    blanks();
    return at == text.length();
  }

  boolean atQuote() {
    return !atEnd() && text.charAt(at) == '"';
  }

  Matcher matcher(Pattern pattern) {
    blanks();
    return pattern.matcher(text).region(at, text.length());
  }

  void skip(int characters) {
    at += characters;
  }

  boolean take(char wanted) {
    if (atEnd() || text.charAt(at) != wanted) {
      return false;
    }
    at++;
    return true;
  }

  /** The next word up to a blank; empty at the end. */
  String peekWord() {
    blanks();
    return text.substring(at, endOfWord(at));
  }

  void word() {
    at += peekWord().length();
  }

  /** What stands between two double quotes; empty if the second is missing. */
  Optional<String> quoted() {
    int end = text.indexOf('"', at + 1);
    if (end < 0) {
      return Optional.empty();
    }
    String inner = text.substring(at + 1, end);
    at = end + 1;
    return Optional.of(inner);
  }

  /** All words up to one of the stops; the first word is never a stop. */
  String words(Set<String> stops) {
    blanks();
    int start = at;
    int end = at;
    while (!atEnd() && !(at > start && stops.contains(peekWord()))) {
      at = endOfWord(at);
      end = at;
    }
    return text.substring(start, end);
  }

  /** What stands before the next of the given characters, or before the end. */
  String upTo(String characters) {
    blanks();
    int start = at;
    while (at < text.length() && characters.indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return text.substring(start, at).strip();
  }

  /** What stands before an en dash or the word {@code to}; empty if an ending comes before them. */
  String upToSeparator() {
    blanks();
    int start = at;
    while (!atEnd()) {
      String word = peekWord();
      int dash = word.indexOf(AskText.EN_DASH);
      if (dash >= 0) {
        at += dash;
        return text.substring(start, at).strip();
      }
      if (at > start && word.equals("to")) {
        return text.substring(start, at).strip();
      }
      if (at > start && AskText.ENDINGS.contains(word)) {
        return "";
      }
      at += word.length();
    }
    return "";
  }

  boolean takeSeparator() {
    if (take(AskText.EN_DASH)) {
      return true;
    }
    if (!peekWord().equals("to")) {
      return false;
    }
    word();
    return true;
  }

  /** Whether a name has the given word behind another one. */
  static boolean hasInnerWord(String name, String word) {
    AskCursor cursor = new AskCursor(name);
    cursor.words(Set.of(word));
    return !cursor.atEnd();
  }
}
