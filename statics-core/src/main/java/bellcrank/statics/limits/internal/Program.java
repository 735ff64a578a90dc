package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear program without an objective: free variables, sums of them that are at most a number,
 * and sums that equal one. Built up row by row, then solved.
 */
public final class Program {

  private final int variables;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> limits = new ArrayList<>();
  private final List<double[]> equalRows = new ArrayList<>();
  private final List<Double> equalValues = new ArrayList<>();

  Program(int variables) {
    this.variables = variables;
  }

  int variables() {
    return variables;
  }

  /** Asks the sum of multiples to be at most a number. */
  void atMost(double[] multiples, double limit) {
    rows.add(multiples);
    limits.add(limit);
  }

  /** Asks the sum of multiples to be a number. */
  void equal(double[] multiples, double value) {
    equalRows.add(multiples);
    equalValues.add(value);
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
    return limits.get(k);
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
