package bellcrank.statics.limits.internal;

import java.util.Arrays;

/**
 * Takes the free variables out of a program, as far as the sum that is made greatest asks for it:
 * one after the other grows until a row stops it, and is from then on given by that row and what it
 * leaves over. Where the sum then can only fall as more is left over, all is said, and no library
 * needs to be asked: the rows that stop it, each so many times, add up to the sum, so no other
 * point can be better. Most limits of multiplied loads come out so. Where not, it declines. The
 * storage serves for one program after the other.
 */
final class FreeCorner {

  /** Coefficients below this share of the largest of their variable do not stop it well enough. */
  private static final double FIRM = 1e-3;

  private final int variables;

  /** Rows that stop a variable; that of one which is still free is −1. */
  private final int[] stop;

  /**
   * Rows of the program, and after them the sum: multiples of what is zero, which is each variable
   * that is free or what its stop leaves over, and last what the row leaves over, or the variable
   * that it stops is.
   */
  private double[] table = {};

  private boolean[] stops = {};

  /** How many times the row that stops each variable is in the sum. */
  private final double[] multiplier;

  private final double[] x;

  FreeCorner(int variables) {
    this.variables = variables;
    stop = new int[variables];
    multiplier = new double[variables];
    x = new double[variables];
  }

  /**
   * Makes a sum greatest.
   *
   * @param program the rows
   * @param objective multiples of the variables, the largest being 1
   * @return whether it was found: {@link #point} is proven then
   */
  boolean find(Program program, double[] objective) {
    if (program.equalSize() > 0 || !begin(program, objective)) {
      return false;
    }
    int rows = program.size();
    int width = variables + 1;
    int sum = rows * width;
    for (int entering = entering(sum); entering >= 0; entering = entering(sum)) {
      int row = stopOf(entering, table[sum + entering] > 0 ? 1 : -1, rows);
      if (row < 0) {
        return false;
      }
      stop[entering] = row;
      stops[row] = true;
      exchange(row, entering, rows);
    }
    for (int j = 0; j < variables; j++) {
      multiplier[j] = stop[j] < 0 ? 0 : -table[sum + j];
      x[j] = stop[j] < 0 ? 0 : table[stop[j] * width + variables];
    }
    return isProven(program, objective);
  }

  /** The point that was found; changed by the next search. */
  double[] point() {
    return x;
  }

  /** False if zeros do not keep all rows: then there is nothing to begin with. */
  private boolean begin(Program program, double[] objective) {
    int rows = program.size();
    int width = variables + 1;
    if (table.length != (rows + 1) * width) {
      table = new double[(rows + 1) * width];
      stops = new boolean[rows];
    }
    Arrays.fill(stops, false);
    Arrays.fill(stop, -1);
    for (int k = 0; k < rows; k++) {
      if (!(program.limit(k) >= 0)) {
        return false;
      }
      System.arraycopy(program.row(k), 0, table, k * width, variables);
      table[k * width + variables] = program.limit(k);
    }
    System.arraycopy(objective, 0, table, rows * width, variables);
    table[rows * width + variables] = 0;
    return true;
  }

  /** The free variable that the sum asks for most; −1 if it asks for none. */
  private int entering(int sum) {
    int best = -1;
    double most = Simplex.ACCURACY;
    for (int j = 0; j < variables; j++) {
      double multiple = Math.abs(table[sum + j]);
      if (stop[j] < 0 && multiple > most) {
        most = multiple;
        best = j;
      }
    }
    return best;
  }

  /** The row that stops a variable first as it grows or falls; −1 if none does, or not well. */
  private int stopOf(int entering, int sense, int rows) {
    int width = variables + 1;
    int best = -1;
    double nearest = Double.POSITIVE_INFINITY;
    double largest = 0;
    for (int k = 0; k < rows; k++) {
      double multiple = sense * table[k * width + entering];
      largest = Math.max(largest, Math.abs(multiple));
      if (multiple > Program.CUT_OFF && !stops[k]) {
        double reach = table[k * width + variables] / multiple;
        if (reach < nearest) {
          nearest = reach;
          best = k;
        }
      }
    }
    return best >= 0 && Math.abs(table[best * width + entering]) >= FIRM * largest ? best : -1;
  }

  /** Solves a row for a variable and puts it into all others; what the row leaves over comes in. */
  private void exchange(int row, int entering, int rows) {
    int width = variables + 1;
    int from = row * width;
    double inverse = 1 / table[from + entering];
    for (int j = 0; j < width; j++) {
      table[from + j] *= inverse;
    }
    table[from + entering] = inverse;
    for (int k = 0; k <= rows; k++) {
      int to = k * width;
      double multiple = table[to + entering];
      if (k != row && multiple != 0) {
        table[to + entering] = 0;
        for (int j = 0; j < width; j++) {
          table[to + j] -= multiple * table[from + j];
        }
      }
    }
  }

  /**
   * Checks point and multipliers with the program as it was given: the point keeps all rows, no
   * multiplier is below zero, and the rows times their multipliers add up to the sum, both in the
   * variables and in what it comes to.
   */
  private boolean isProven(Program program, double[] objective) {
    boolean proven = program.miss(x) <= Simplex.MISS;
    double gap = 0;
    double size = 1;
    for (int j = 0; j < variables; j++) {
      double left = objective[j];
      double parts = 1;
      for (int of = 0; of < variables; of++) {
        if (multiplier[of] != 0) {
          double part = multiplier[of] * program.row(stop[of])[j];
          left -= part;
          parts += Math.abs(part);
        }
      }
      double most = multiplier[j] == 0 ? 0 : multiplier[j] * program.limit(stop[j]);
      gap += most - objective[j] * x[j];
      size += Math.abs(most);
      proven &= multiplier[j] >= -Simplex.ACCURACY && Math.abs(left) <= Simplex.MISS * parts;
    }
    return proven && Math.abs(gap) <= Simplex.MISS * size;
  }
}
