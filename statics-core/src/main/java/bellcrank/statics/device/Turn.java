package bellcrank.statics.device;

/** A sense of turning. */
public enum Turn {
  /** With the hands of a clock. */
  CLOCKWISE(-1),
  /** Against the hands of a clock. */
  COUNTER_CLOCKWISE(1);

  private final int sign;

  Turn(int sign) {
    this.sign = sign;
  }

  /**
   * Sign of the sense.
   *
   * @return +1 counter-clockwise, −1 clockwise
   */
  public int sign() {
    return sign;
  }
}
