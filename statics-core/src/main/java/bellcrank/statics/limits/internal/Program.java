package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program without an objective: free variables, sums of them that are at most a number,
 * and sums that equal one. Built up row by row, then solved.
 */
public final class Program {

  /** Scaled coefficients below this are zero. */
  static final double CUT_OFF = 1e-12;

  private final int variables;
  private final List<double[]> rows;
  private double[] limits;
  private final List<double[]> equalRows = new ArrayList<>();
  private final List<Double> equalValues = new ArrayList<>();

  Program(int variables) {
    this(variables, 16);
  }

  /** The same, with storage for a number of rows. */
  Program(int variables, int expected) {
    this.variables = variables;
    rows = new ArrayList<>(expected);
    limits = new double[expected];
  }

  int variables() {
    return variables;
  }

  /** Asks the sum of multiples to be at most a number; the row is taken over and scaled. */
  void atMost(double[] multiples, double limit) {
    double size = scaled(multiples);
    if (rows.size() == limits.length) {
      limits = Arrays.copyOf(limits, 2 * limits.length + 1);
    }
    limits[rows.size()] = limit / size;
    rows.add(multiples);
  }

  /** Asks the sum of multiples to be a number; the row is taken over and scaled. */
  void equal(double[] multiples, double value) {
    double size = scaled(multiples);
    equalRows.add(multiples);
    equalValues.add(value / size);
  }

  /** Divides a row by its largest entry; what is far below that becomes zero. */
  private static double scaled(double[] row) {
    double size = 0;
    for (double entry : row) {
      size = Math.max(size, Math.abs(entry));
    }
    if (size == 0) {
      return 1;
    }
    for (int j = 0; j < row.length; j++) {
      double entry = row[j] / size;
      row[j] = Math.abs(entry) < CUT_OFF ? 0 : entry;
    }
    return size;
  }

  int size() {
    return rows.size();
  }

  int equalSize() {
    return equalRows.size();
  }

  double[] row(int k) {
    return rows.get(k);
  }

  double limit(int k) {
    return limits[k];
  }

  double[] equalRow(int k) {
    return equalRows.get(k);
  }

  double equalValue(int k) {
    return equalValues.get(k);
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
      sum += row[j] * x[j];
      size += Math.abs(row[j] * x[j]);
    }
    return (both ? Math.abs(sum) : sum) / size;
  }
}
