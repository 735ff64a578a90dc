package bellcrank.statics.limits;

/**
 * What a one-sided or rough part does in the states that the device can be in.
 *
 * @param part name of the connection
 * @param state what it does
 * @param force range of its normal force or tension, in N
 */
public record PartState(String part, State state, Range force) {

  /** What a part does. */
  public enum State {
    /** It carries a force in every state, and sticks. */
    CARRIES("carries"),
    /** It carries a force in every state, and its friction is at the limit in every one. */
    ABOUT_TO_SLIP("about to slip"),
    /** It may carry a force or none: statics leaves it open. */
    MAY_CARRY("may carry or not"),
    /** A contact or roller that touches without force in every state. */
    OPEN("open"),
    /** A line or rope without tension in every state. */
    SLACK("slack");

    private final String words;

    State(String words) {
      this.words = words;
    }

    /**
     * The state in words.
     *
     * @return such as {@code may carry or not}
     */
    public String words() {
      return words;
    }
  }
}
