package bellcrank.statics.equilibrium.internal;

/**
 * What one unit of each unknown does to the bodies: a list of actions, each a force at a place and
 * a couple on one body (index −1 is the ground). Motion values are the same unless the connection
 * is lossy: then the rows of the motion it forbids differ from the forces it carries.
 */
public final class Actions {

  private static final int WIDTH = 5;
  private static final int MOTION_WIDTH = 3;
  private static final double[] NONE = {};

  /** Unknown of each action; shared with the assembly and never written. */
  final int[] column;

  /** Body of each action; shared with the assembly and never written. */
  final int[] body;

  // x, y, fx, fy, couple of one action side by side: they are read together
  private final double[] values;
  private final double[] motions;

  Actions(int[] column, int[] body, boolean lossy) {
    this.column = column;
    this.body = body;
    values = new double[WIDTH * column.length];
    motions = lossy ? new double[MOTION_WIDTH * column.length] : NONE;
  }

  int count() {
    return column.length;
  }

  boolean lossy() {
    return motions.length > 0;
  }

  double x(int action) {
    return values[WIDTH * action];
  }

  double y(int action) {
    return values[WIDTH * action + 1];
  }

  double fx(int action) {
    return values[WIDTH * action + 2];
  }

  double fy(int action) {
    return values[WIDTH * action + 3];
  }

  double couple(int action) {
    return values[WIDTH * action + 4];
  }

  /** Moment of one unit about a place, counter-clockwise positive. */
  double moment(int action, double aboutX, double aboutY) {
    int k = WIDTH * action;
    return (values[k] - aboutX) * values[k + 3]
        - (values[k + 1] - aboutY) * values[k + 2]
        + values[k + 4];
  }

  double motionX(int action) {
    return lossy() ? motions[MOTION_WIDTH * action] : fx(action);
  }

  double motionY(int action) {
    return lossy() ? motions[MOTION_WIDTH * action + 1] : fy(action);
  }

  /** Moment of the motion row about a place. */
  double motionMoment(int action, double aboutX, double aboutY) {
    if (!lossy()) {
      return moment(action, aboutX, aboutY);
    }
    int k = MOTION_WIDTH * action;
    return (x(action) - aboutX) * motions[k + 1]
        - (y(action) - aboutY) * motions[k]
        + motions[k + 2];
  }

  /** Writes place, force and couple of an action. */
  void put(int action, double px, double py, double forceX, double forceY, double c) {
    int k = WIDTH * action;
    values[k] = px;
    values[k + 1] = py;
    values[k + 2] = forceX;
    values[k + 3] = forceY;
    values[k + 4] = c;
    if (lossy()) {
      putMotion(action, forceX, forceY);
      motions[MOTION_WIDTH * action + 2] = c;
    }
  }

  /** Writes the motion row where it differs from the force. */
  void putMotion(int action, double mx, double my) {
    motions[MOTION_WIDTH * action] = mx;
    motions[MOTION_WIDTH * action + 1] = my;
  }
}
