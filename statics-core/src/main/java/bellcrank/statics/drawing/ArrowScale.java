package bellcrank.statics.drawing;

/** How the length of an arrow follows from the size of its force. */
public enum ArrowScale {
  /** In proportion. */
  LINEAR,
  /** By the logarithm, so that forces of very different size can be seen side by side. */
  LOGARITHMIC
}
