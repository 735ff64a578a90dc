package bellcrank.statics.limits;

/**
 * What one part does when a device gives way.
 *
 * @param part name of the connection
 * @param kind what happens there
 * @param words a clause without the part's name, such as {@code slides left}
 */
public record Event(String part, Kind kind, String words) {

  /** What can happen at a part. */
  public enum Kind {
    /** A contact or base slides along the surface. */
    SLIDES,
    /** A contact, base or one-sided roller leaves the surface. */
    LIFTS,
    /** A base turns about one of its edges. */
    TIPS,
    /** A base sinks into the ground. */
    SINKS,
    /** A line or rope goes slack. */
    GOES_SLACK,
    /** A rope slips round its post. */
    SLIPS_ROUND,
    /** A pin turns against its friction. */
    TURNS,
    /** A screw turns in its thread. */
    RUNS
  }
}
