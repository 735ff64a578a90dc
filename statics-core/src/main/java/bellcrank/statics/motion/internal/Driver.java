package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;
import java.util.Arrays;

/** Reads how far a device has been driven, and how that changes with its velocities. */
public interface Driver {

  /** How far, in rad or in sizes of the device. */
  double value(Closure closure);

  /**
   * Adds its rate for each velocity.
   *
   * @param closure where the device stands
   * @param row by velocities, zero before
   */
  void addRow(Closure closure, double[] row);

  /** Writes its rate for each velocity. */
  default void write(Closure closure, double[] row) {
    Arrays.fill(row, 0);
    addRow(closure, row);
  }

  /** Its rate for each velocity. */
  default double[] row(Closure closure) {
    double[] row = new double[closure.speeds()];
    addRow(closure, row);
    return row;
  }
}
