package bellcrank.statics.drawing;

/** What lies over what, from the lowest up. */
enum Layer {
  /** Other poses. */
  GHOST,
  /** Supports and ground. */
  GROUND,
  /** Members. */
  BODY,
  /** Ropes, struts, springs. */
  LINK,
  /** Pins and joints. */
  PIN,
  /** Lines of action, dimensions, angles. */
  CONSTRUCTION,
  /** Loads that are spread. */
  STRIP,
  /** Forces and couples. */
  FORCE
}
