package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.equilibrium.internal.Senses;

/** A place on the way. Not changed after construction. */
final class Node {

  /** How far the device was driven. */
  final double drive;

  /** Turn, shift to the right and up of each body. */
  final double[] configuration;

  /** The free motion there, of length one, by velocities. */
  final double[] tangent;

  /** Rate of the drive along it. */
  final double rate;

  /** Rate of the configuration along it. */
  final double[] slope;

  /** Least singular value of the motion rows, in a small device; none where several are free. */
  final double least;

  /** On which side of dependent they lie, in a large device. */
  final Senses senses;

  private Node(
      double drive,
      double[] configuration,
      double[] tangent,
      double rate,
      double[] slope,
      double least,
      Senses senses) {
    this.drive = drive;
    this.configuration = configuration;
    this.tangent = tangent;
    this.rate = rate;
    this.slope = slope;
    this.least = least;
    this.senses = senses;
  }

  /** The place where a closure stands, the free motion there being known. */
  static Node at(Closure closure, Driver driver, double[] tangent, double least) {
    double[] row = driver.row(closure);
    double rate = 0;
    for (int i = 0; i < row.length; i++) {
      rate += row[i] * tangent[i];
    }
    return new Node(
        driver.value(closure),
        closure.configuration(),
        tangent,
        rate,
        slope(closure, tangent),
        least,
        closure.senses());
  }

  private static double[] slope(Closure closure, double[] tangent) {
    double[] slope = closure.configuration();
    for (int body = 0; body < slope.length / 3; body++) {
      int first = closure.assembly().firstRow(body);
      double turning = body < closure.assembly().memberCount() ? tangent[first + 2] : 0;
      double x = slope[3 * body + 1];
      double y = slope[3 * body + 2];
      slope[3 * body] = turning;
      slope[3 * body + 1] = tangent[first] - turning * y;
      slope[3 * body + 2] = tangent[first + 1] + turning * x;
    }
    return slope;
  }
}
