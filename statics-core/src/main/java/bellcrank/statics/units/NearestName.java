package bellcrank.statics.units;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the known name that a mistyped one was probably meant to be.
 *
 * <p>Distance is the number of letters put in, left out, changed, or swapped with their neighbour
 * (Damerau 1964, Levenshtein 1966; the restricted form, in which no letter is edited twice; from
 * memory), upper and lower case being the same. A name is near when the distance is at most a third
 * of the mistyped name's length, or 1, and they have a letter in common.
 */
public final class NearestName {
  private NearestName() {}

  /**
   * Finds the nearest known name.
   *
   * @param wrong the mistyped name
   * @param known the names that would be accepted
   * @return the nearest one, the first of equally near ones in the order given; empty if none is
   *     near
   */
  public static Optional<String> of(String wrong, Collection<String> known) {
    return all(wrong, known).stream().findFirst();
  }

  /** All names that share the smallest distance, in the order given; empty if none is near. */
  static List<String> all(String wrong, Collection<String> known) {
    String folded = wrong.toLowerCase(Locale.ROOT);
    int best = Math.max(1, folded.length() / 3);
    List<String> nearest = new ArrayList<>();
    for (String name : known) {
      String candidate = name.toLowerCase(Locale.ROOT);
      if (Math.abs(candidate.length() - folded.length()) > best) {
        continue;
      }
      int distance = distance(folded, candidate);
      if (distance == Math.max(folded.length(), candidate.length()) && distance > 0) {
        continue;
      }
      if (distance < best) {
        nearest.clear();
        best = distance;
      }
      if (distance == best) {
        nearest.add(name);
      }
    }
    return List.copyOf(nearest);
  }

  private static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      int[] free = beforeLast;
      beforeLast = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
