package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.LoadCase;

/**
 * Puts the forces back on each body and adds them up about the device's middle. It uses neither the
 * equations nor their moment centres, so that a slip in these cannot hide.
 */
final class Residual {

  private Residual() {}

  static double of(
      Assembly assembly,
      Actions a,
      Placements placements,
      LoadCase loadCase,
      double[] x,
      double scale) {
    if (!(scale > 0)) {
      return 0;
    }
    Wrenches left = new Wrenches(assembly.bodyCount());
    assembly.load(placements, loadCase, left);
    return of(assembly, a, left, x, scale);
  }

  /** The same with the loads, about the middle, in {@code left} already. */
  static double of(Assembly assembly, Actions a, Wrenches left, double[] x, double scale) {
    for (int action = 0; action < a.column.length; action++) {
      int body = a.body[action];
      if (body >= 0) {
        double size = x[a.column[action]];
        double fx = a.fx[action] * size;
        double fy = a.fy[action] * size;
        left.fx[body] += fx;
        left.fy[body] += fy;
        left.moment[body] += a.x[action] * fy - a.y[action] * fx + a.couple[action] * size;
      }
    }
    double largest = 0;
    for (int body = 0; body < left.fx.length; body++) {
      largest = Math.max(largest, Math.abs(left.fx[body]));
      largest = Math.max(largest, Math.abs(left.fy[body]));
      if (body < assembly.memberCount()) {
        largest = Math.max(largest, Math.abs(left.moment[body]));
      }
    }
    return largest / scale;
  }
}
