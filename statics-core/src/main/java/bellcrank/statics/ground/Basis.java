package bellcrank.statics.ground;

/** How a figure came into a table, which tells how far to look it up again. */
public enum Basis {
  /** Seen in print: in the document named, or in a public reprint or quotation of it. */
  PRINTED,
  /** Remembered from the document named; not looked up. */
  FROM_MEMORY,
  /** Held in the trade without a source. */
  COMMON_PRACTICE
}
