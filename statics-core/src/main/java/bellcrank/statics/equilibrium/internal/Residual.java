package bellcrank.statics.equilibrium.internal;

/**
 * Puts the forces back on each body and adds them up about the device's middle. It uses neither the
 * equations nor their moment centres, so that a slip in these cannot hide.
 */
final class Residual {

  private Residual() {}

  /**
   * Largest force, or moment over the size, that is left on a body.
   *
   * @param actions what a unit of each unknown does
   * @param x the unknowns
   * @param loads the given loads about the middle; overwritten by what is left
   * @param members number of members
   * @param scale the largest force; the result is relative to it
   */
  static double of(Actions actions, double[] x, Wrenches loads, int members, double scale) {
    if (!(scale > 0)) {
      return 0;
    }
    loads.add(actions, x);
    return loads.largest(members) / scale;
  }
}
