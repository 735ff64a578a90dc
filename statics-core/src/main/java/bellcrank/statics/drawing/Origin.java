package bellcrank.statics.drawing;

/** Where a force on a free body comes from. */
public enum Origin {
  /** A given load, or a spring. */
  LOAD("given load"),
  /** The weight of a mass. */
  WEIGHT("weight"),
  /** A sought quantity. */
  SOUGHT("sought effort"),
  /** A connection that was cut. */
  CONNECTION("force at a cut or support");

  private final String words;

  Origin(String words) {
    this.words = words;
  }

  /**
   * The origin in a few words.
   *
   * @return such as {@code given load}
   */
  public String words() {
    return words;
  }
}
