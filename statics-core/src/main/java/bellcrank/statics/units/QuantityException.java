package bellcrank.statics.units;

/** Says that a text or number is no usable unit or quantity, and what would be accepted instead. */
public final class QuantityException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The refused text as it was given. */
  private final String text;

  /** What is wrong with it. */
  private final String problem;

  /** What would be accepted instead. */
  private final String accepted;

  /**
   * Makes an exception whose message is the problem, a colon, and what would be accepted.
   *
   * @param text the refused text, unchanged
   * @param problem what is wrong with it, as the beginning of a sentence
   * @param accepted what would be accepted, as the end of that sentence
   */
  public QuantityException(String text, String problem, String accepted) {
    super(problem + ": " + accepted);
    this.text = text;
    this.problem = problem;
    this.accepted = accepted;
  }

  /**
   * Returns the refused text.
   *
   * @return the text as it was given, unchanged and in full length
   */
  public String text() {
    return text;
  }

  /**
   * Returns what would be accepted instead.
   *
   * @return the end of the message, for example {@code write lbf}
   */
  public String accepted() {
    return accepted;
  }

  /** The same mistake as a part of a longer text. */
  QuantityException about(String whole) {
    return new QuantityException(whole, problem, accepted);
  }
}
