package bellcrank.statics.equilibrium.internal;

/**
 * The equations A·f = b of all bodies with their numbers: a matrix by columns with a pattern fixed
 * by the assembly. Row order within a member is x, y, moment; within a joint x, y. Moments are
 * divided by the device's size.
 */
final class Equations {

  final int rows;
  final int columns;
  final int[] start;
  final int[] row;
  final double[] value;

  private final Assembly assembly;
  private final int[] entryOfAction;

  Equations(Assembly assembly, Actions actions) {
    this.assembly = assembly;
    rows = assembly.rows();
    columns = assembly.columns();
    int count = actions.column.length;
    start = new int[columns + 1];
    entryOfAction = new int[count];
    int[] rowBuffer = new int[3 * count];
    int used = 0;
    int action = 0;
    int members = assembly.memberCount();
    for (int column = 0; column < columns; column++) {
      start[column] = used;
      int first = action;
      // the actions of a law come column by column
      while (action < count && actions.column[action] == column) {
        int body = actions.body[action];
        entryOfAction[action] = body < 0 ? -1 : sameBody(actions, first, action);
        if (body >= 0 && entryOfAction[action] < 0) {
          entryOfAction[action] = used;
          int base = assembly.firstRow(body);
          rowBuffer[used++] = base;
          rowBuffer[used++] = base + 1;
          if (body < members) {
            rowBuffer[used++] = base + 2;
          }
        }
        action++;
      }
    }
    start[columns] = used;
    row = java.util.Arrays.copyOf(rowBuffer, used);
    value = new double[used];
  }

  /** Entry of an earlier action of the same column on the same body; −1 if there is none. */
  private int sameBody(Actions actions, int first, int action) {
    for (int earlier = first; earlier < action; earlier++) {
      if (actions.body[earlier] == actions.body[action]) {
        return entryOfAction[earlier];
      }
    }
    return -1;
  }

  /** Fills in the forces that the connections carry, about the given centres. */
  void fillForces(Actions a, double[] centreX, double[] centreY) {
    fill(a, a.fx, a.fy, a.couple, centreX, centreY);
  }

  /**
   * Fills in the motions that the connections forbid; the transpose of the force matrix if ideal.
   */
  void fillMotions(Actions a, double[] centreX, double[] centreY) {
    fill(a, a.motionX, a.motionY, a.motionCouple, centreX, centreY);
  }

  private void fill(
      Actions a, double[] fx, double[] fy, double[] couple, double[] centreX, double[] centreY) {
    java.util.Arrays.fill(value, 0);
    int members = assembly.memberCount();
    for (int action = 0; action < entryOfAction.length; action++) {
      int entry = entryOfAction[action];
      if (entry < 0) {
        continue;
      }
      value[entry] += fx[action];
      value[entry + 1] += fy[action];
      int body = a.body[action];
      if (body < members) {
        value[entry + 2] +=
            (a.x[action] - centreX[body]) * fy[action]
                - (a.y[action] - centreY[body]) * fx[action]
                + couple[action];
      }
    }
  }

  /** Writes b = −loads. */
  void rightSide(Wrenches loads, double[] b) {
    int members = assembly.memberCount();
    int row = 0;
    for (int body = 0; body < loads.fx.length; body++) {
      b[row++] = -loads.fx[body];
      b[row++] = -loads.fy[body];
      if (body < members) {
        b[row++] = -loads.moment[body];
      }
    }
  }
}
