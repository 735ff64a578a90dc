package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;

/** Loads collected on each body: force, and moment about one place for all bodies; scaled. */
final class Wrenches {

  private static final int WIDTH = 3;

  private final int bodies;
  private final double aboutX;
  private final double aboutY;

  // fx, fy, moment of each body side by side
  private final double[] sums;

  /** Sum of the sizes of all that was added: the scale against which a zero is a zero. */
  double scale;

  /** Empty sums with moments about the device's middle. */
  Wrenches(int bodies) {
    this(bodies, 0, 0);
  }

  /** Empty sums with moments about a place. */
  Wrenches(int bodies, double aboutX, double aboutY) {
    this.bodies = bodies;
    this.aboutX = aboutX;
    this.aboutY = aboutY;
    sums = new double[WIDTH * bodies];
  }

  void clear() {
    Arrays.fill(sums, 0);
    scale = 0;
  }

  /** Clears the sums of one body. */
  void clear(int body) {
    Arrays.fill(sums, WIDTH * body, WIDTH * body + WIDTH, 0);
  }

  /** Takes the sums of others about the same place. */
  void copy(Wrenches others) {
    System.arraycopy(others.sums, 0, sums, 0, sums.length);
    scale = others.scale;
  }

  int bodies() {
    return bodies;
  }

  double fx(int body) {
    return sums[WIDTH * body];
  }

  double fy(int body) {
    return sums[WIDTH * body + 1];
  }

  double moment(int body) {
    return sums[WIDTH * body + 2];
  }

  /** Adds a force at a place and a couple, both scaled; loads on the ground vanish in it. */
  void add(int body, double x, double y, double forceX, double forceY, double couple) {
    if (body < 0) {
      return;
    }
    int k = WIDTH * body;
    sums[k] += forceX;
    sums[k + 1] += forceY;
    sums[k + 2] += (x - aboutX) * forceY - (y - aboutY) * forceX + couple;
    scale += Math.abs(forceX) + Math.abs(forceY) + Math.abs(couple);
  }

  /** Adds multiples of the actions of connections; they do not count for the scale. */
  void add(Actions actions, double[] x) {
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int k = WIDTH * body;
        double size = x[actions.column[action]];
        sums[k] += size * actions.fx(action);
        sums[k + 1] += size * actions.fy(action);
        sums[k + 2] += size * actions.moment(action, aboutX, aboutY);
      }
    }
  }

  /**
   * Writes b = −loads in the order of the equations: three for each member, two for a joint.
   *
   * @param members number of members; they are the first bodies
   * @param centre moment centres, x and y of each member side by side
   * @param b receives the right side
   */
  void rightSide(int members, double[] centre, double[] b) {
    int row = 0;
    for (int body = 0; body < bodies; body++) {
      b[row++] = -fx(body);
      b[row++] = -fy(body);
      if (body < members) {
        b[row++] = -momentAbout(body, centre);
      }
    }
  }

  double momentAbout(int body, double[] centre) {
    return moment(body)
        - (centre[2 * body] - aboutX) * fy(body)
        + (centre[2 * body + 1] - aboutY) * fx(body);
  }

  /** Largest force or moment on a body; joints have no moments. */
  double largest(int members) {
    double largest = 0;
    for (int k = 0; k < sums.length; k++) {
      double size = Math.abs(sums[k]);
      if (size > largest && (k % WIDTH < 2 || k < WIDTH * members)) {
        largest = size;
      }
    }
    return largest;
  }
}
