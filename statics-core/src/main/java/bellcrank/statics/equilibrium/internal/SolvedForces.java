package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.LoadCase;

/** A device with numbers for its unknowns, in the pose and under the loads for which they hold. */
interface SolvedForces {

  /** Where the bodies are. */
  Placements placements();

  /** The unit forces there. */
  Actions actions();

  /** Factors of the loads. */
  LoadCase loadCase();

  /** Value of an unknown: N, or N·m divided by the size for couples. */
  double unknown(int column);
}
