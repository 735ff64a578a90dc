package bellcrank.statics.equilibrium.internal;

/** Given loads collected on each body: force and moment about the body's moment centre, scaled. */
final class Wrenches {

  final double[] fx;
  final double[] fy;
  final double[] moment;
  final double[] centreX;
  final double[] centreY;

  /** Sum of the sizes of all that was added: the scale against which a zero is a zero. */
  double scale;

  Wrenches(int bodies) {
    fx = new double[bodies];
    fy = new double[bodies];
    moment = new double[bodies];
    centreX = new double[bodies];
    centreY = new double[bodies];
  }

  void clear() {
    java.util.Arrays.fill(fx, 0);
    java.util.Arrays.fill(fy, 0);
    java.util.Arrays.fill(moment, 0);
    scale = 0;
  }

  /** Adds a force at a place and a couple, both scaled; loads on the ground vanish in it. */
  void add(int body, double x, double y, double forceX, double forceY, double couple) {
    if (body < 0) {
      return;
    }
    fx[body] += forceX;
    fy[body] += forceY;
    moment[body] += (x - centreX[body]) * forceY - (y - centreY[body]) * forceX + couple;
    scale += Math.abs(forceX) + Math.abs(forceY) + Math.abs(couple);
  }
}
