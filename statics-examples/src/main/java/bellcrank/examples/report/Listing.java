package bellcrank.examples.report;

import java.util.List;

/** Lists and counts in words. */
final class Listing {

  private Listing() {}

  /** {@code a, b and c}. */
  static String of(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** A name as it stands in a running sentence, where it could be taken for a word. */
  static String quoted(String name) {
    return '"' + name + '"';
  }

  /** {@code "a", "b" and "c"}. */
  static String ofNames(List<String> names) {
    return of(names.stream().map(Listing::quoted).toList());
  }

  /** {@code 1 member}, {@code 2 members}. */
  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
