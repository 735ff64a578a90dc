package bellcrank.statics.explain;

/** How much of a worked solution is written. */
public enum Detail {
  /** The answers only. */
  ANSWER,
  /** What is cut, which equation, and what it yields, in one line each; then the answers. */
  OUTLINE,
  /** Every equation with its reason, in symbols and in numbers; a list of symbols; the answers. */
  FULL
}
