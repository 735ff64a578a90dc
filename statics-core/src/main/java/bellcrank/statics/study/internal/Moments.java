package bellcrank.statics.study.internal;

/**
 * Count, mean, spread and ends of numbers that come one by one (Welford, Note on a method for
 * calculating corrected sums of squares and products, 1962; put together by Chan, Golub and LeVeque
 * 1979; from memory).
 */
public final class Moments {

  private long count;
  private double mean;
  private double squares;
  private double least = Double.POSITIVE_INFINITY;
  private double greatest = Double.NEGATIVE_INFINITY;
  private long leastAt = -1;
  private long greatestAt = -1;

  /**
   * Takes in a number.
   *
   * @param value the number, finite
   * @param sample number of its sample
   */
  void add(double value, long sample) {
    count++;
    double off = value - mean;
    mean += off / count;
    squares += off * (value - mean);
    if (value < least) {
      least = value;
      leastAt = sample;
    }
    if (value > greatest) {
      greatest = value;
      greatestAt = sample;
    }
  }

  /** Takes in what others have counted, whose samples come after these. */
  void addAll(Moments later) {
    if (later.count == 0) {
      return;
    }
    double off = later.mean - mean;
    long both = count + later.count;
    double share = (double) later.count / both;
    squares += later.squares + off * off * count * share;
    mean += off * share;
    count = both;
    if (later.least < least) {
      least = later.least;
      leastAt = later.leastAt;
    }
    if (later.greatest > greatest) {
      greatest = later.greatest;
      greatestAt = later.greatestAt;
    }
  }

  /**
   * How many numbers.
   *
   * @return 0 or more
   */
  public long count() {
    return count;
  }

  /**
   * The mean.
   *
   * @return 0 of no numbers
   */
  public double mean() {
    return mean;
  }

  /**
   * The standard deviation, estimated from the samples (n − 1).
   *
   * @return 0 of fewer than two numbers
   */
  public double deviation() {
    return count < 2 ? 0 : Math.sqrt(squares / (count - 1));
  }

  /**
   * The least number.
   *
   * @return of at least one number
   */
  public double least() {
    return least;
  }

  /**
   * The greatest number.
   *
   * @return of at least one number
   */
  public double greatest() {
    return greatest;
  }

  /**
   * The first sample with the least number.
   *
   * @return its number, from 0
   */
  public long leastAt() {
    return leastAt;
  }

  /**
   * The first sample with the greatest number.
   *
   * @return its number, from 0
   */
  public long greatestAt() {
    return greatestAt;
  }
}
