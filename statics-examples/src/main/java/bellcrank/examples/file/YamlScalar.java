package bellcrank.examples.file;

import java.util.Locale;
import java.util.Set;

/** Writes texts as YAML scalars that every reader takes for the same text. */
final class YamlScalar {

  /** Words that readers of YAML 1.1 take for truth values or nothing. */
  private static final Set<String> NOT_TEXT =
      Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

  /** Signs that mean nothing to YAML inside a text that begins with a letter. */
  private static final String HARMLESS = "_-./·²³°%+–()^";

  private YamlScalar() {}

  /** The scalar for a text, good inside flow style and as a key. */
  static String of(String text) {
    if (isPlain(text)) {
      return text;
    }
    boolean backslashes = text.indexOf('"') >= 0 || text.indexOf('\\') >= 0;
    boolean showable = text.codePoints().allMatch(YamlScalar::isShowable);
    return backslashes && showable && text.indexOf('\'') < 0
        ? '\'' + text + '\''
        : doubleQuoted(text);
  }

  private static boolean isPlain(String text) {
    if (text.isEmpty()
        || !Character.isLetter(text.codePointAt(0))
        || NOT_TEXT.contains(text.toLowerCase(Locale.ROOT))) {
      return false;
    }
    boolean harmless =
        text.codePoints()
            .allMatch(c -> Character.isLetterOrDigit(c) || c == ' ' || HARMLESS.indexOf(c) >= 0);
    return harmless && !text.endsWith(" ") && !text.contains("  ");
  }

  /** Whether a character may stand in a file as it is. */
  static boolean isShowable(int c) {
    int type = Character.getType(c);
    return !Character.isISOControl(c)
        && type != Character.SURROGATE
        && type != Character.FORMAT
        && type != Character.UNASSIGNED
        && type != Character.PRIVATE_USE
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }

  static String doubleQuoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> quoted.append(escaped(c)));
    return quoted.append('"').toString();
  }

  private static String escaped(int c) {
    return switch (c) {
      case '"' -> "\\\"";
      case '\\' -> "\\\\";
      case '\n' -> "\\n";
      case '\t' -> "\\t";
      default -> {
        if (isShowable(c)) {
          yield Character.toString(c);
        }
        yield c <= 0xFFFF ? "\\u%04X".formatted(c) : "\\U%08X".formatted(c);
      }
    };
  }
}
