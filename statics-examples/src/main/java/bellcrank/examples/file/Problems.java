package bellcrank.examples.file;

import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Collects what is wrong in one file. */
final class Problems {

  /** Suggestions cost time for each known name; a file with more problems is wrong as a whole. */
  private static final int MOST_SUGGESTIONS = 200;

  private static final int MOST_LISTED = 12;

  private final String file;
  private final Set<FileProblem> found = new LinkedHashSet<>();
  private final Set<Mark> marks = new HashSet<>();
  private int suggestions;

  Problems(String file) {
    this.file = file;
  }

  void add(Mark mark, String where, String phrase, String wanted) {
    marks.add(mark);
    put(mark, where, phrase, wanted);
  }

  /** Adds a problem of the whole model unless its place was found wrong, which then caused it. */
  void addUnlessReported(Mark mark, String where, String phrase, String wanted) {
    if (!marks.contains(mark)) {
      put(mark, where, phrase, wanted);
    }
  }

  private void put(Mark mark, String where, String phrase, String wanted) {
    // problems of the model quote names as they are, with line breaks if they have some
    String shown = Excerpt.phrase(phrase);
    found.add(
        new FileProblem(file, mark.line(), mark.column(), where, shown, Excerpt.phrase(wanted)));
  }

  boolean none() {
    return found.isEmpty();
  }

  List<FileProblem> inOrder() {
    List<FileProblem> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(FileProblem::line).thenComparingInt(FileProblem::column));
    return sorted;
  }

  /** Whether there is still time to look for near names. */
  boolean mayLook() {
    return suggestions < MOST_SUGGESTIONS;
  }

  /** The known name that was probably meant. */
  Optional<String> near(String wrong, Collection<String> known) {
    if (!mayLook()) {
      return Optional.empty();
    }
    suggestions++;
    return NearestName.of(wrong, known);
  }

  /** What is wanted in place of an unknown name. */
  String name(String kind, String wrong, Collection<String> known) {
    if (known.isEmpty()) {
      return "the name of a " + kind + " (there is none)";
    }
    return near(wrong, known)
        .map(near -> "the name of a " + kind + "; the nearest is " + Excerpt.quoted(near))
        .orElseGet(() -> "the name of a " + kind + ": " + listed(known));
  }

  /** The names, a dozen at most. */
  static String listed(Collection<String> names) {
    return String.join(", ", names.stream().limit(MOST_LISTED).toList())
        + (names.size() > MOST_LISTED ? ", …" : "");
  }
}
