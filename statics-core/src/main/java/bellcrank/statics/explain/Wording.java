package bellcrank.statics.explain;

import java.util.List;

/** Strings names together. */
final class Wording {

  private Wording() {}

  static String and(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
