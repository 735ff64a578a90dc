package bellcrank.examples.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The style sheets of pictures, each once for all pictures that have it, and kept from the rest of
 * the page: within a page a style sheet holds everywhere, wherever it stands.
 */
final class PictureStyle {

  private static final Pattern SELECTORS = Pattern.compile("([^{}]+)\\{");

  private final Map<String, String> names = new LinkedHashMap<>();

  /** The class that a picture with this style sheet gets. */
  String nameOf(String sheet) {
    String next = "picture-" + (names.size() + 1);
    return names.computeIfAbsent(sheet, one -> next);
  }

  /** All style sheets, each for pictures of its class only. */
  String text() {
    StringBuilder text = new StringBuilder();
    names.forEach((sheet, name) -> text.append(within(sheet, "." + name)));
    return text.toString();
  }

  private static String within(String sheet, String scope) {
    Matcher rule = SELECTORS.matcher(sheet);
    StringBuilder text = new StringBuilder();
    while (rule.find()) {
      String selectors = rule.group(1).strip();
      String scoped =
          selectors.startsWith("@")
              ? selectors
              : scope + " " + String.join("," + scope + " ", selectors.split(",", -1));
      rule.appendReplacement(text, Matcher.quoteReplacement("\n" + scoped + "{"));
    }
    rule.appendTail(text);
    return text.toString();
  }
}
