package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.List;

/** Equations reduced as they come: tells whether a further one is independent. */
final class Rows {

  /** Entries below this share of a row's largest are zero once others are taken out. */
  static final double ZERO = 1e-8;

  private final int columns;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Integer> pivots = new ArrayList<>();

  /**
   * No rows.
   *
   * @param columns number of unknowns; a row has the right side behind them
   */
  Rows(int columns) {
    this.columns = columns;
  }

  int rank() {
    return rows.size();
  }

  List<Integer> pivots() {
    return pivots;
  }

  /** Whether a row was independent of those before it and has been added. */
  boolean add(double[] given) {
    double[] row = scaled(given);
    for (int k = 0; k < rows.size(); k++) {
      take(row, rows.get(k), pivots.get(k));
    }
    int pivot = 0;
    for (int j = 1; j < columns; j++) {
      pivot = Math.abs(row[j]) > Math.abs(row[pivot]) ? j : pivot;
    }
    if (columns == 0 || Math.abs(row[pivot]) <= ZERO) {
      return false;
    }
    double factor = 1 / row[pivot];
    for (int j = 0; j < row.length; j++) {
      row[j] *= factor;
    }
    for (double[] before : rows) {
      take(before, row, pivot);
    }
    rows.add(row);
    pivots.add(pivot);
    return true;
  }

  private double[] scaled(double[] given) {
    double largest = 0;
    for (int j = 0; j < columns; j++) {
      largest = Math.max(largest, Math.abs(given[j]));
    }
    double[] row = given.clone();
    for (int j = 0; largest > 0 && j < row.length; j++) {
      row[j] /= largest;
    }
    return row;
  }

  private static void take(double[] from, double[] row, int pivot) {
    double factor = from[pivot];
    if (factor != 0) {
      for (int j = 0; j < from.length; j++) {
        from[j] -= factor * row[j];
      }
      from[pivot] = 0;
    }
  }

  /** Whether the rows fix an unknown. */
  boolean fixes(int column) {
    int k = pivots.indexOf(column);
    if (k < 0) {
      return false;
    }
    for (int j = 0; j < columns; j++) {
      if (j != column && Math.abs(rows.get(k)[j]) > ZERO) {
        return false;
      }
    }
    return true;
  }

  /** Value of an unknown that the rows fix. */
  double value(int column) {
    return rows.get(pivots.indexOf(column))[columns];
  }
}
