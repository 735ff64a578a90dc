package bellcrank.statics.device;

/** On which side of a place something is meant, where it jumps there. */
public enum Side {
  /** Just before the place, coming from the start of the bar. */
  BEFORE("before"),
  /** Just after the place. */
  AFTER("after");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  /**
   * The word in an ask, behind {@code just}.
   *
   * @return {@code before} or {@code after}
   */
  public String word() {
    return word;
  }

  /**
   * The other side.
   *
   * @return the other one
   */
  public Side opposite() {
    return this == BEFORE ? AFTER : BEFORE;
  }
}
