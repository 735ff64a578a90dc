package bellcrank.statics.equilibrium.internal;

/** Where a force enters the bars of a member, in drawn and scaled coordinates. */
sealed interface Entry {

  /** At a point that is fixed in the member. */
  record At(double x, double y) implements Entry {}

  /** Wherever the force acts in the pose: what touches there slides along the member. */
  record Sliding() implements Entry {}

  /** Spread along a segment. */
  record Along(double ax, double ay, double bx, double by) implements Entry {}

  /** Spread evenly over all bars. */
  record OverBars() implements Entry {}

  /** The device does not say where. */
  record Unplaced() implements Entry {}
}
