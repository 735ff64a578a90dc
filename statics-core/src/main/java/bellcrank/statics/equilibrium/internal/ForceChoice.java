package bellcrank.statics.equilibrium.internal;

/** Which forces of a device are free, and how the others follow the loads while those are zero. */
sealed interface ForceChoice permits KeptChoice, PivotedChoice, SmallChoice {

  /** The column of a free force. */
  int freeColumn(int which);

  /** Turns the right side of loads, in its place, into what {@link #respond} takes. */
  void turn(double[] load);

  /**
   * Writes the forces that balance loads, with all free forces zero.
   *
   * @param turned the loads, turned; changed
   * @param forces receives the forces, by unknowns
   */
  void respond(double[] turned, double[] forces);
}
