package bellcrank.statics.study.internal;

import java.util.Arrays;
import java.util.List;

/** All numbers of one figure over the samples, and why it had none in the others. Immutable. */
public final class Column {

  private final double[] sorted;
  private final Moments moments;
  private final Tally missing;

  private Column(double[] sorted, Moments moments, Tally missing) {
    this.sorted = sorted;
    this.moments = moments;
    this.missing = missing;
  }

  /**
   * Puts the sheets of all blocks together.
   *
   * @param sheets in the order of their samples
   * @param figure which figure
   * @return its column
   */
  public static Column of(List<Sheet> sheets, int figure) {
    Moments moments = new Moments();
    Tally missing = new Tally();
    for (Sheet sheet : sheets) {
      moments.addAll(sheet.moments(figure));
      missing.addAll(sheet.missing(figure));
    }
    double[] all = new double[Math.toIntExact(moments.count())];
    int filled = 0;
    for (Sheet sheet : sheets) {
      filled = sheet.copy(figure, all, filled);
    }
    Arrays.sort(all);
    return new Column(all, moments, missing);
  }

  /**
   * Count, mean, deviation and ends.
   *
   * @return of the samples with a number
   */
  public Moments moments() {
    return moments;
  }

  /**
   * Why there was no number.
   *
   * @return reasons with counts
   */
  public Tally missing() {
    return missing;
  }

  /**
   * A number by its place in the order.
   *
   * @param rank 1 for the least, up to the count; beyond them the nearest end
   * @return the number
   */
  public double ranked(long rank) {
    return sorted[(int) Math.max(0, Math.min(sorted.length - 1L, rank - 1))];
  }

  /**
   * How many numbers are below another.
   *
   * @param bound the other
   * @return 0 or more; what equals it is not counted
   */
  public long below(double bound) {
    int from = 0;
    int to = sorted.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (sorted[middle] < bound) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
