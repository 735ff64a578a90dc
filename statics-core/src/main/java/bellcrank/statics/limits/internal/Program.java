package bellcrank.statics.limits.internal;

import java.util.Arrays;

/**
 * A linear program without an objective: free variables, sums of them that are at most a number,
 * and sums that equal one. Built up row by row, then solved; once cleared, its rows are storage for
 * the next one.
 */
public final class Program {

  /** Scaled coefficients below this are zero. */
  static final double CUT_OFF = 1e-12;

  private final int variables;
  private final Rows most;
  private final Rows equal;

  Program(int variables) {
    this(variables, 16);
  }

  /** The same, with storage for a number of rows. */
  Program(int variables, int expected) {
    this.variables = variables;
    most = new Rows(expected);
    equal = new Rows(0);
  }

  int variables() {
    return variables;
  }

  /** Takes all rows away. */
  void clear() {
    most.size = 0;
    equal.size = 0;
  }

  /** A row for {@link #atMost}, with any numbers in it; one that was cleared if there is one. */
  double[] blank() {
    return most.size < most.made ? most.rows[most.size] : new double[variables];
  }

  /** Asks the sum of multiples to be at most a number; the row is taken over and scaled. */
  void atMost(double[] multiples, double limit) {
    most.add(multiples, limit);
  }

  /** Asks the sum of multiples to be a number; the row is taken over and scaled. */
  void equal(double[] multiples, double value) {
    equal.add(multiples, value);
  }

  /** Takes the last row of {@link #atMost} away. */
  void dropLast() {
    most.size--;
  }

  int size() {
    return most.size;
  }

  int equalSize() {
    return equal.size;
  }

  double[] row(int k) {
    return most.rows[k];
  }

  double limit(int k) {
    return most.values[k];
  }

  double[] equalRow(int k) {
    return equal.rows[k];
  }

  double equalValue(int k) {
    return equal.values[k];
  }

  /** By how much a point misses the rows at most, relative to the size of what is added up. */
  double miss(double[] x) {
    double worst = 0;
    for (int k = 0; k < size(); k++) {
      worst = Math.max(worst, missOf(row(k), limit(k), x, false));
    }
    for (int k = 0; k < equalSize(); k++) {
      worst = Math.max(worst, missOf(equalRow(k), equalValue(k), x, true));
    }
    return worst;
  }

  private static double missOf(double[] row, double limit, double[] x, boolean both) {
    double sum = -limit;
    double size = 1 + Math.abs(limit);
    for (int j = 0; j < x.length; j++) {
      double term = row[j] * x[j];
      sum += term;
      size += Math.abs(term);
    }
    return (both ? Math.abs(sum) : sum) / size;
  }

  /** Rows with a number each; those beyond the size are storage. */
  private static final class Rows {

    private static final double[][] NO_ROWS = {};
    private static final double[] NO_VALUES = {};

    private double[][] rows;
    private double[] values;
    private int size;
    private int made;

    Rows(int expected) {
      rows = expected == 0 ? NO_ROWS : new double[expected][];
      values = expected == 0 ? NO_VALUES : new double[expected];
    }

    void add(double[] row, double value) {
      if (size == rows.length) {
        rows = Arrays.copyOf(rows, 2 * size + 2);
        values = Arrays.copyOf(values, 2 * size + 2);
      }
      double largest = scaled(row);
      rows[size] = row;
      values[size++] = value / largest;
      made = Math.max(made, size);
    }

    /** Divides a row by its largest entry; what is far below that becomes zero. */
    private static double scaled(double[] row) {
      double largest = 0;
      for (double entry : row) {
        largest = Math.max(largest, Math.abs(entry));
      }
      if (largest == 0) {
        return 1;
      }
      for (int j = 0; j < row.length; j++) {
        double entry = row[j] / largest;
        row[j] = Math.abs(entry) < CUT_OFF ? 0 : entry;
      }
      return largest;
    }
  }
}
