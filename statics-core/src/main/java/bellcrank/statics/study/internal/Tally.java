package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts by name how often something happened, with the first sample in which it did. */
public final class Tally {

  /**
   * What was counted.
   *
   * @param name what happened
   * @param count in how many samples, 1 or more
   * @param first number of the first of them
   */
  public record Entry(String name, long count, long first) {}

  /** No more names than this are told apart, so that memory stays bounded. */
  static final int MOST_NAMES = 100;

  /** What all further names are counted as. */
  static final String OTHERS = "others";

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  /**
   * Counts one.
   *
   * @param name what happened
   * @param sample number of the sample
   */
  public void add(String name, long sample) {
    add(new Entry(name, 1, sample));
  }

  /**
   * Takes in what others have counted.
   *
   * @param later counts of samples that come after these
   */
  public void addAll(Tally later) {
    later.entries.values().forEach(this::add);
  }

  private void add(Entry more) {
    boolean known = entries.containsKey(more.name()) || entries.size() < MOST_NAMES;
    entries.merge(
        known ? more.name() : OTHERS,
        known ? more : new Entry(OTHERS, more.count(), more.first()),
        (first, later) -> new Entry(first.name(), first.count() + later.count(), first.first()));
  }

  /**
   * All counts.
   *
   * @return in the order in which they first happened
   */
  public List<Entry> entries() {
    return new ArrayList<>(entries.values());
  }

  /**
   * How often anything was counted.
   *
   * @return sum of all counts
   */
  public long total() {
    return entries.values().stream().mapToLong(Entry::count).sum();
  }
}
