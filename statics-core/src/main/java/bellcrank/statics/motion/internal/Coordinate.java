package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;

/**
 * One number of the configuration as what drives a device: where it is the one that changes most,
 * it goes on evenly past a dead centre, where a drive turns back.
 *
 * @param index which number: turn, shift to the right and up of each body in turn
 */
public record Coordinate(int index) implements Driver {

  /** The number that differs most between two configurations. */
  public static Coordinate ofLargestChange(double[] from, double[] to) {
    int best = 0;
    for (int i = 1; i < from.length; i++) {
      if (Math.abs(to[i] - from[i]) > Math.abs(to[best] - from[best])) {
        best = i;
      }
    }
    return new Coordinate(best);
  }

  @Override
  public double value(Closure closure) {
    return closure.number(index);
  }

  @Override
  public void addRow(Closure closure, double[] row) {
    int body = index / 3;
    int first = closure.assembly().firstRow(body);
    boolean turns = body < closure.assembly().memberCount();
    int number = index % 3;
    if (number == 0) {
      row[first + 2] += 1;
      return;
    }
    row[first + number - 1] += 1;
    // velocities are those of what is at the device's middle now, not of the drawn middle
    if (turns) {
      row[first + 2] += number == 1 ? -closure.number(index + 1) : closure.number(index - 1);
    }
  }
}
