package bellcrank.examples.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Builds a mapping in flow style. Inside the texts made here a line break is a place where the
 * layout may break the line; scalars never hold one.
 */
final class Flow {

  private static final String SEPARATOR = ",\n";

  private final List<String> fields = new ArrayList<>();

  Flow() {}

  /** Adds a field whose value is written already. */
  Flow put(String key, String written) {
    fields.add(YamlScalar.of(key) + ": " + written);
    return this;
  }

  /** Adds a field that is a text. */
  Flow text(String key, String text) {
    return put(key, YamlScalar.of(text));
  }

  /** Adds a field that is a text, if there is one. */
  Flow text(String key, Optional<String> text) {
    text.ifPresent(one -> text(key, one));
    return this;
  }

  /** Adds a field that is a list of texts. */
  Flow texts(String key, List<String> texts) {
    return put(key, list(texts));
  }

  /** Adds a field that is a list of texts, unless it is empty. */
  Flow textsIfAny(String key, List<String> texts) {
    return texts.isEmpty() ? this : texts(key, texts);
  }

  /** Adds a count, unless it is 1. */
  Flow count(int count) {
    return count == 1 ? this : put("count", Integer.toString(count));
  }

  /** The mapping. */
  String written() {
    return "{" + String.join(SEPARATOR, fields) + "}";
  }

  /** A list of texts. */
  static String list(List<String> texts) {
    return items(texts.stream().map(YamlScalar::of).toList());
  }

  /** A list of values that are written already. */
  static String items(List<String> written) {
    return written.stream().collect(Collectors.joining(SEPARATOR, "[", "]"));
  }
}
