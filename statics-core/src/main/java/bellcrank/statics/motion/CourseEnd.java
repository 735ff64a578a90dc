package bellcrank.statics.motion;

/**
 * Where a course ends, and why.
 *
 * @param drive value of the drive there, in rad or m from the drawn pose
 * @param why why it ends
 * @param part name of the part that ends it; empty if it is none
 */
public record CourseEnd(double drive, Why why, String part) {

  /** Why a course ends. */
  public enum Why {
    /** It has come to the stated limit. */
    STATED("stated limit"),
    /** The drive has come to a dead centre: it would have to turn back. */
    DEAD_CENTRE("dead centre"),
    /** A line or rope goes slack. */
    SLACK("goes slack"),
    /** A contact, base, one-sided roller or slot lifts off. */
    LIFTS("lifts off"),
    /** Two parts meet. */
    MEETS("parts meet"),
    /** No further step fits the connections. */
    STUCK("no further step fits"),
    /**
     * It goes on, but after 20,000 steps, such as 800 rad of a crank, it is followed no farther.
     */
    TOO_LONG("followed no farther");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return such as {@code dead centre}
     */
    public String words() {
      return words;
    }
  }

  /**
   * The end in words.
   *
   * @return such as {@code dead centre} or {@code stay goes slack}
   */
  public String words() {
    return part.isEmpty() ? why.words() : part + " " + why.words();
  }
}
