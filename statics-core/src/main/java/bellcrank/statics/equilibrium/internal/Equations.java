package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;

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

  private final int members;
  private final int[] entryOfAction;

  Equations(Assembly assembly, Actions actions) {
    rows = assembly.rows();
    columns = assembly.columns();
    members = assembly.memberCount();
    int count = actions.count();
    start = new int[columns + 1];
    entryOfAction = new int[count];
    int[] rowBuffer = new int[3 * count];
    int used = 0;
    int action = 0;
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
    row = Arrays.copyOf(rowBuffer, used);
    value = new double[used];
  }

  /**
   * Equations of any other kind, by columns.
   *
   * @param start where each column starts; one more entry than columns
   * @param row row of each entry
   * @param value value of each entry
   */
  Equations(int rows, int[] start, int[] row, double[] value) {
    this.rows = rows;
    columns = start.length - 1;
    this.start = start;
    this.row = row;
    this.value = value;
    members = 0;
    entryOfAction = new int[0];
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

  /**
   * Where an action's part of its column starts: x, y, and for a member the moment; −1 for the
   * ground.
   */
  int entryOf(int action) {
    return entryOfAction[action];
  }

  /** Fills in the forces that the connections carry, with moments about the given centres. */
  void fillForces(Actions actions, double[] centre) {
    Arrays.fill(value, 0);
    for (int action = 0; action < entryOfAction.length; action++) {
      int entry = entryOfAction[action];
      if (entry >= 0) {
        value[entry] += actions.fx(action);
        value[entry + 1] += actions.fy(action);
        int body = actions.body[action];
        if (body < members) {
          value[entry + 2] += actions.moment(action, centre[2 * body], centre[2 * body + 1]);
        }
      }
    }
  }

  /**
   * Fills in the motions that the connections forbid; the transpose of the force matrix if ideal.
   */
  void fillMotions(Actions actions, double[] centre) {
    Arrays.fill(value, 0);
    for (int action = 0; action < entryOfAction.length; action++) {
      int entry = entryOfAction[action];
      if (entry >= 0) {
        value[entry] += actions.motionX(action);
        value[entry + 1] += actions.motionY(action);
        int body = actions.body[action];
        if (body < members) {
          value[entry + 2] += actions.motionMoment(action, centre[2 * body], centre[2 * body + 1]);
        }
      }
    }
  }
}
