package bellcrank.statics.device;

import java.util.HashSet;
import java.util.List;

/** The checks that parts make on their own fields. */
final class Check {

  private static final int LONGEST_NAME = 80;

  /** Bound on any number of a model in SI units; far beyond it sums would overflow. */
  static final double LARGEST = 1e30;

  private Check() {}

  static String name(String kind, String name) {
    String wanted =
        "a text of 1 to " + LONGEST_NAME + " characters without \", line breaks or outer blanks";
    if (name.isEmpty() || name.length() > LONGEST_NAME || !name.equals(name.strip())) {
      throw new ModelException(kind, "name", quote(name), wanted);
    }
    boolean printable =
        name.codePoints()
            .allMatch(
                c ->
                    c != '"'
                        && !Character.isISOControl(c)
                        && Character.isDefined(c)
                        && Character.getType(c) != Character.SURROGATE
                        && Character.getType(c) != Character.LINE_SEPARATOR
                        && Character.getType(c) != Character.PARAGRAPH_SEPARATOR
                        && Character.getType(c) != Character.FORMAT);
    if (!printable) {
      throw new ModelException(kind, "name", quote(name), wanted);
    }
    return name;
  }

  static double finite(String part, String field, double value) {
    if (!(Math.abs(value) <= LARGEST)) {
      throw new ModelException(part, field, value, "a finite number within ±" + LARGEST);
    }
    return value + 0.0;
  }

  static double positive(String part, String field, double value) {
    if (!(finite(part, field, value) > 0)) {
      throw new ModelException(part, field, value, "a number above 0");
    }
    return value;
  }

  static double notNegative(String part, String field, double value) {
    if (finite(part, field, value) < 0) {
      throw new ModelException(part, field, value, "0 or more");
    }
    return value + 0.0;
  }

  /** A coefficient of friction. */
  static double friction(String part, String field, double value) {
    if (!(value <= LARGEST)) {
      throw new ModelException(
          part,
          field,
          value,
          "a finite number of 0 or more: the tangent of a friction angle below 90 degrees");
    }
    return notNegative(part, field, value);
  }

  static List<String> different(String part, String field, List<String> names, int least) {
    if (names.size() < least) {
      throw new ModelException(part, field, names, "at least " + least + " names");
    }
    if (new HashSet<>(names).size() < names.size()) {
      throw new ModelException(part, field, names, "names that differ");
    }
    return List.copyOf(names);
  }

  static String quote(String text) {
    return '"' + text + '"';
  }
}
