package bellcrank.statics.device;

/** Whether a connection carries force in both senses. */
public enum Sides {
  /** It pushes and pulls. */
  TWO,
  /** It can only push in its positive sense. */
  ONE
}
