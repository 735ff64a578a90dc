package bellcrank.statics.explain;

import java.util.List;

/**
 * A paragraph of a written solution.
 *
 * @param kind how it is set
 * @param number number of a step; 0 for what has none
 * @param pieces words and formulas in turn
 */
record Passage(Kind kind, int number, List<Piece> pieces) {

  /** How a paragraph is set. */
  enum Kind {
    /** Head of a part. */
    HEAD,
    /** A sentence, numbered if it begins a step. */
    SENTENCE,
    /** A formula on a line of its own, and what it means. */
    LINE,
    /** An entry of a list. */
    ENTRY
  }
}
