package bellcrank.examples.fuzz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** One change of a device file's text. */
final class FileChange {

  private enum Kind {
    NUMBER_NUDGED,
    NUMBER_EXTREME,
    NUMBER_FROM_ELSEWHERE,
    VALUE_SWAPPED,
    VALUE_FROM_ELSEWHERE,
    VALUE_HOSTILE,
    KEY_HOSTILE,
    KEY_SWAPPED,
    WORD_FOR_WORD,
    NAME_FOR_NAME_EVERYWHERE,
    LINE_LEFT_OUT,
    LINE_TWICE,
    LINES_SWAPPED,
    SECTION_LEFT_OUT,
    SECTION_TWICE,
    SECTION_FROM_ELSEWHERE,
    NESTED,
    ALIASED,
    INDENTED,
    CUT_OFF,
    SIGN_PUT_IN
  }

  private static final List<Kind> KINDS = List.of(Kind.values());

  /** Those that mostly leave a file that can be read. */
  private static final List<Kind> MILD =
      List.of(
          Kind.NUMBER_NUDGED,
          Kind.NUMBER_NUDGED,
          Kind.NUMBER_NUDGED,
          Kind.NUMBER_EXTREME,
          Kind.NUMBER_FROM_ELSEWHERE,
          Kind.VALUE_SWAPPED,
          Kind.VALUE_FROM_ELSEWHERE,
          Kind.WORD_FOR_WORD,
          Kind.LINE_LEFT_OUT,
          Kind.SECTION_LEFT_OUT,
          Kind.SECTION_FROM_ELSEWHERE);

  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\p{L}\\d.])-?\\d++(?:\\.\\d++)?(?:e-?\\d++)?");
  private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\d]*+");
  private static final Pattern VALUE =
      Pattern.compile("(?<=: )[^,{}\\[\\]\\n]++|\\[[^\\[\\]\\n]*+]");
  private static final Pattern KEY =
      Pattern.compile("[^\\s,:{}\\[\\]][^,:{}\\[\\]\\n]*+(?=:[ \\n])");
  private static final Pattern SECTION = Pattern.compile("(?m)^\\S.*\\n(?:[ \\t#].*\\n|\\n)*+");
  private static final List<Double> FACTORS =
      List.of(-1.0, 0.0, 0.5, 2.0, 10.0, 0.1, 1e3, 1e-3, 1e-6, 1e6, 1 + 1e-9, 1e-12);

  private final Choices choices;
  private final Supplier<String> elsewhere;

  /**
   * A kind of change.
   *
   * @param choices what decides
   * @param elsewhere another file
   */
  FileChange(Choices choices, Supplier<String> elsewhere) {
    this.choices = choices;
    this.elsewhere = elsewhere;
  }

  String of(String text) {
    List<Kind> kinds = choices.below(8) == 7 ? KINDS : MILD;
    return switch (kinds.get(choices.below(kinds.size()))) {
      case NUMBER_NUDGED -> nudged(text);
      case NUMBER_EXTREME -> replaced(text, NUMBER, one(HostileWords.NUMBERS));
      case NUMBER_FROM_ELSEWHERE -> replaced(text, NUMBER, found(elsewhere.get(), NUMBER));
      case VALUE_SWAPPED -> replaced(text, VALUE, found(text, VALUE));
      case VALUE_FROM_ELSEWHERE -> replaced(text, VALUE, found(elsewhere.get(), VALUE));
      case VALUE_HOSTILE -> replaced(text, VALUE, one(HostileWords.WORDS));
      case KEY_HOSTILE -> replaced(text, KEY, one(HostileWords.WORDS));
      case KEY_SWAPPED -> replaced(text, KEY, found(text, KEY));
      case WORD_FOR_WORD -> replaced(text, WORD, found(text, WORD));
      case NAME_FOR_NAME_EVERYWHERE -> renamed(text);
      case LINE_LEFT_OUT -> lines(text, 0);
      case LINE_TWICE -> lines(text, 1);
      case LINES_SWAPPED -> lines(text, 2);
      case SECTION_LEFT_OUT -> replaced(text, SECTION, "");
      case SECTION_TWICE -> text + "\n" + found(text, SECTION);
      case SECTION_FROM_ELSEWHERE -> section(text);
      case NESTED -> nested(text);
      case ALIASED -> aliased(text);
      case INDENTED -> indented(text);
      case CUT_OFF -> text.substring(0, choices.below(text.length() + 1));
      case SIGN_PUT_IN -> putIn(text);
    };
  }

  private String one(List<String> words) {
    return words.get(choices.below(words.size()));
  }

  private static List<MatchResult> all(String text, Pattern pattern) {
    return pattern.matcher(text).results().toList();
  }

  /** One of the places at which a pattern is found; empty if there is none. */
  private String found(String text, Pattern pattern) {
    List<MatchResult> all = all(text, pattern);
    return all.isEmpty() ? "" : all.get(choices.below(all.size())).group();
  }

  private String replaced(String text, Pattern pattern, String by) {
    List<MatchResult> all = all(text, pattern);
    if (all.isEmpty()) {
      return text + by;
    }
    MatchResult at = all.get(choices.below(all.size()));
    return text.substring(0, at.start()) + by + text.substring(at.end());
  }

  /** A number a little or much different, which mostly leaves the file readable. */
  private String nudged(String text) {
    List<MatchResult> all = all(text, NUMBER);
    if (all.isEmpty()) {
      return text;
    }
    MatchResult at = all.get(choices.below(all.size()));
    double number = Double.parseDouble(at.group());
    int how = choices.below(FACTORS.size() + 4);
    double other =
        how < FACTORS.size() ? number * FACTORS.get(how) : number + how - FACTORS.size() - 1.5;
    return text.substring(0, at.start()) + other + text.substring(at.end());
  }

  private String renamed(String text) {
    String from = found(text, WORD);
    String to = found(text, WORD);
    return from.isEmpty()
        ? text
        : text.replaceAll("(?<![\\p{L}\\d])" + Pattern.quote(from) + "(?![\\p{L}\\d])", to);
  }

  private String lines(String text, int how) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    int at = choices.below(lines.size());
    switch (how) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(choices.below(lines.size()), lines.get(at));
      default -> Collections.swap(lines, at, choices.below(lines.size()));
    }
    return String.join("\n", lines) + "\n";
  }

  /** A section of another file in the place of the one with the same key, or behind all. */
  private String section(String text) {
    String other = found(elsewhere.get(), SECTION);
    String key = other.substring(0, other.indexOf(':') + 1);
    for (MatchResult here : all(text, SECTION)) {
      if (!key.isEmpty() && here.group().startsWith(key)) {
        return text.substring(0, here.start()) + other + text.substring(here.end());
      }
    }
    return text + "\n" + other;
  }

  private String nested(String text) {
    int deep = 1 + choices.below(40);
    String value = found(text, VALUE);
    return choices.below(2) == 0
        ? replaced(text, VALUE, "[".repeat(deep) + value + "]".repeat(deep))
        : replaced(text, VALUE, "{a: ".repeat(deep) + value + "}".repeat(deep));
  }

  private String aliased(String text) {
    String value = found(text, VALUE);
    return replaced(replaced(text, VALUE, "&a " + value), VALUE, "*a");
  }

  private String indented(String text) {
    return switch (choices.below(4)) {
      case 0 -> text.replace("  ", "\t");
      case 1 -> text.replace("\n", "\r\n");
      case 2 -> text.replace("\n", "\n ");
      default -> text.replace("\n  ", "\n");
    };
  }

  private String putIn(String text) {
    int at = choices.below(text.length() + 1);
    return text.substring(0, at) + one(HostileWords.WORDS) + text.substring(at);
  }
}
