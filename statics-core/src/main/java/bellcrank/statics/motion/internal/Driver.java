package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;

/** Reads how far a device has been driven, and how that changes with its velocities. */
public interface Driver {

  /** How far, in rad or in sizes of the device. */
  double value(Closure closure);

  /** Its rate for each velocity. */
  double[] row(Closure closure);
}
