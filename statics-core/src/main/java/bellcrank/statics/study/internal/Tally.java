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

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  void add(String name, long sample) {
    add(new Entry(name, 1, sample));
  }

  /** Takes in what others have counted, whose samples come after these. */
  void addAll(Tally later) {
    later.entries.values().forEach(this::add);
  }

  private void add(Entry more) {
    entries.merge(
        more.name(),
        more,
        (known, later) -> new Entry(known.name(), known.count() + later.count(), known.first()));
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
