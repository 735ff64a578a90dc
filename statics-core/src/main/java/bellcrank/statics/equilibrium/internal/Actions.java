package bellcrank.statics.equilibrium.internal;

/**
 * What one unit of each unknown does to the bodies: a list of actions, each a force at a place and
 * a couple on one body (index −1 is the ground). Motion values are the same unless the connection
 * is lossy: then the rows of the motion it forbids differ from the forces it carries.
 */
public final class Actions {

  final int[] column;
  final int[] body;
  final double[] x;
  final double[] y;
  final double[] fx;
  final double[] fy;
  final double[] couple;
  final double[] motionX;
  final double[] motionY;
  final double[] motionCouple;

  Actions(int count, boolean lossy) {
    column = new int[count];
    body = new int[count];
    x = new double[count];
    y = new double[count];
    fx = new double[count];
    fy = new double[count];
    couple = new double[count];
    // one set of arrays serves both readings where no connection is lossy
    motionX = lossy ? new double[count] : fx;
    motionY = lossy ? new double[count] : fy;
    motionCouple = lossy ? new double[count] : couple;
  }

  boolean lossy() {
    return motionX != fx;
  }

  void put(int action, double px, double py, double forceX, double forceY, double c) {
    x[action] = px;
    y[action] = py;
    fx[action] = forceX;
    fy[action] = forceY;
    couple[action] = c;
    motionX[action] = forceX;
    motionY[action] = forceY;
    motionCouple[action] = c;
  }

  void putMotion(int action, double mx, double my, double c) {
    motionX[action] = mx;
    motionY[action] = my;
    motionCouple[action] = c;
  }
}
