package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;

/**
 * Puts a closure to where a drive has a value, by Newton's method from a place nearby. Storage is
 * used again, so nothing is allocated unless rows depend on one another. Not for several threads.
 */
public final class Seat {

  /** Gap, in sizes of the device, at which the connections fit. */
  static final double FITS = 1e-13;

  private static final int MOST_CORRECTIONS = 12;

  private static final double[] NONE = {};

  private final Closure closure;
  private final Driver driver;
  private final double[] row;
  private final double[] change;
  private final double[] place;

  /**
   * A seat.
   *
   * @param closure what is put
   * @param driver what tells how far it is driven
   */
  public Seat(Closure closure, Driver driver) {
    this.closure = closure;
    this.driver = driver;
    row = new double[closure.speeds()];
    change = new double[closure.speeds()];
    place = closure.configuration();
  }

  /** Puts it between two nodes. */
  void put(Node a, Node b, double drive) {
    Between.write(a, b, drive, place);
    fit(drive);
  }

  /**
   * Puts it near a place on the straight line between two configurations, in shares of it.
   *
   * @param from one configuration
   * @param to the other
   * @param share from 0 to 1
   * @param drive value that the drive shall have
   */
  public void put(double[] from, double[] to, double share, double drive) {
    for (int i = 0; i < place.length; i++) {
      place[i] = from[i] + share * (to[i] - from[i]);
    }
    fit(drive);
  }

  /** Goes back to a node. */
  void put(Node node) {
    closure.restore(node.configuration);
  }

  /** Puts it to a configuration that fits. */
  void put(double[] configuration) {
    closure.restore(configuration);
  }

  double[] configuration() {
    return closure.configuration();
  }

  private void fit(double drive) {
    closure.restore(place);
    for (int round = 0; round < MOST_CORRECTIONS; round++) {
      double miss = drive - driver.value(closure);
      if (round > 0
          && closure.error() <= FITS
          && Math.abs(miss) <= FITS * Math.max(1, Math.abs(drive))) {
        return;
      }
      driver.write(closure, row);
      closure.correct(row, miss, change);
      closure.move(change, 1);
    }
    // next to a dead centre the drive says too little about where it is: at least all shall fit
    for (int round = 0; round < MOST_CORRECTIONS && closure.error() > FITS; round++) {
      closure.move(closure.correction(NONE, 0), 1);
    }
  }
}
