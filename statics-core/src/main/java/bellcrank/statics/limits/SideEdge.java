package bellcrank.statics.limits;

/** A long edge of a base in its side view. */
public enum SideEdge {
  /** The edge at the negative end, away from one who stands before the drawing of the device. */
  LEFT(-1, "left"),
  /** The edge at the positive end, towards one who stands before the drawing of the device. */
  RIGHT(1, "right");

  private final int sign;
  private final String word;

  SideEdge(int sign, String word) {
    this.sign = sign;
    this.word = word;
  }

  /**
   * Which way it lies.
   *
   * @return −1 for left, 1 for right
   */
  public int sign() {
    return sign;
  }

  /**
   * Its word.
   *
   * @return {@code left} or {@code right}
   */
  public String word() {
    return word;
  }

  /**
   * The other edge.
   *
   * @return right for left, left for right
   */
  public SideEdge opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
