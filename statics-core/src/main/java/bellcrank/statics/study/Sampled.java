package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Column;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one figure came to in the samples. Every number is kept, so percentiles are exact for these
 * samples. Immutable.
 */
public final class Sampled {

  /** Shares beyond which samples are left out of a histogram, if they lie far off. */
  private static final double TAIL = 0.001;

  /** A tail longer than this many widths of the rest is left out. */
  private static final double FAR = 1;

  private static final int MOST_BINS = 1000;

  /** Numbers that differ by less than this share are alike. */
  private static final double ALIKE = 1e-9;

  /** Room on either side of numbers that are alike, as a share of them. */
  private static final double ROOM = 1e-6;

  /** How often a bound may be missed on its side, for both to be 95 % sure. */
  private static final double HALF_UNSURE = 0.025;

  private final Figure figure;
  private final Dimension dimension;
  private final FigureAnswer stated;
  private final Column column;
  private final Numbers numbers;

  /** Reads the uncertain numbers of a sample. */
  @FunctionalInterface
  interface Numbers {
    List<Double> of(long sample);
  }

  Sampled(Figure figure, Dimension dimension, FigureAnswer stated, Column column, Numbers numbers) {
    this.figure = figure;
    this.dimension = dimension;
    this.stated = stated;
    this.column = column;
    this.numbers = numbers;
  }

  /**
   * The figure.
   *
   * @return as it was asked
   */
  public Figure figure() {
    return figure;
  }

  /**
   * What kind of quantity it is.
   *
   * @return its dimension; a plain number if there is none in any sample
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * What it comes to with all numbers as the model states them.
   *
   * @return the number, or why there is none
   */
  public FigureAnswer stated() {
    return stated;
  }

  /**
   * In how many samples it has a number.
   *
   * @return 0 or more
   */
  public long count() {
    return column.moments().count();
  }

  /**
   * Why it has no number in the others, and how often.
   *
   * @return reasons in the order in which they were met; empty if it always has one
   */
  public List<Counted> missing() {
    return column.missing().entries().stream()
        .map(one -> new Counted(one.name(), one.count(), numbers.of(one.first())))
        .toList();
  }

  /**
   * The mean.
   *
   * @return SI; empty if there is no number
   */
  public Optional<Double> mean() {
    return count() == 0 ? Optional.empty() : Optional.of(column.moments().mean());
  }

  /**
   * The standard deviation, estimated from the samples.
   *
   * @return SI; empty if there are fewer than two numbers
   */
  public Optional<Double> deviation() {
    return count() < 2 ? Optional.empty() : Optional.of(column.moments().deviation());
  }

  /**
   * The standard deviation of the mean: how far off the mean of these samples is as a rule.
   *
   * @return SI; empty if there are fewer than two numbers
   */
  public Optional<Double> errorOfMean() {
    return deviation().map(deviation -> deviation / Math.sqrt((double) count()));
  }

  /**
   * The least number met.
   *
   * @return with the first sample that has it; empty if there is no number
   */
  public Optional<FigureAt> least() {
    return count() == 0
        ? Optional.empty()
        : Optional.of(at(column.moments().least(), column.moments().leastAt()));
  }

  /**
   * The greatest number met.
   *
   * @return with the first sample that has it; empty if there is no number
   */
  public Optional<FigureAt> greatest() {
    return count() == 0
        ? Optional.empty()
        : Optional.of(at(column.moments().greatest(), column.moments().greatestAt()));
  }

  private FigureAt at(double si, long sample) {
    return new FigureAt(si, dimension, numbers.of(sample));
  }

  /**
   * The least number that a share of the samples with a number is at or below.
   *
   * @param share above 0 and below 1, such as 0.95
   * @return the value with its bounds; empty if there is no number
   * @throws ModelException if the share is not between 0 and 1
   */
  public Optional<Percentile> percentile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new ModelException(figure.text(), "share", share, "a number above 0 and below 1");
    }
    if (count() == 0) {
      return Optional.empty();
    }
    double expected = share * count();
    // a rank is a whole number: what rounding adds to it must not lift it to the next
    long rank = (long) Math.ceil(expected - ALIKE * expected);
    double off = Chance.SURE * Math.sqrt(expected * (1 - share));
    return Optional.of(
        new Percentile(
            share,
            column.ranked(rank),
            bound((long) Math.floor(expected - off), 1 - share),
            bound((long) Math.ceil(expected + off) + 1, share)));
  }

  /**
   * The bound at a rank. Beyond the samples their end is one, unless they all lie on one side of
   * the true value too often.
   */
  private OptionalDouble bound(long rank, double side) {
    boolean within = rank >= 1 && rank <= count();
    return within || Math.pow(side, (double) count()) <= HALF_UNSURE
        ? OptionalDouble.of(column.ranked(rank))
        : OptionalDouble.empty();
  }

  /**
   * The share of the samples with a number that are below a bound.
   *
   * @param si the bound, SI; what equals it is not below
   * @return 0 to 1; empty if there is no number
   */
  public Optional<Double> shareBelow(double si) {
    return count() == 0 ? Optional.empty() : Optional.of((double) column.below(si) / count());
  }

  /**
   * A histogram from the least to the greatest number. Where a thousandth of the samples at an end
   * would take more room than all the others, they are counted beside it instead.
   *
   * @param bins how many ranges, 1 to 1,000
   * @return empty if there is no number
   * @throws ModelException if the number of ranges is not acceptable
   */
  public Optional<Histogram> histogram(int bins) {
    if (bins < 1 || bins > MOST_BINS) {
      throw new ModelException(figure.text(), "bins", bins, "1 to " + MOST_BINS);
    }
    if (count() == 0) {
      return Optional.empty();
    }
    long tail = (long) (TAIL * count());
    double low = column.ranked(tail + 1);
    double high = column.ranked(count() - tail);
    double far = FAR * (high - low);
    double least = column.moments().least();
    double greatest = column.moments().greatest();
    double from = low - least > far ? low : least;
    double to = greatest - high > far ? high : greatest;
    if (!(to > from)) {
      from = least;
      to = greatest;
    }
    return Optional.of(between(from, to, bins));
  }

  private Histogram between(double least, double greatest, int bins) {
    double from = least;
    double to = greatest;
    double large = Math.max(Math.abs(from), Math.abs(to));
    if (to - from <= ALIKE * large) {
      // all alike, or nothing but zeros: a range round them
      double room = large > 0 ? ROOM * large : 1;
      from -= room;
      to += room;
    }
    List<Histogram.Bin> all = new ArrayList<>();
    long before = column.below(from);
    long start = before;
    for (int k = 1; k <= bins; k++) {
      double left = k == 1 ? from : all.get(k - 2).to();
      double right = k == bins ? to : from + (to - from) * k / bins;
      long end = k == bins ? column.below(Math.nextUp(to)) : column.below(right);
      all.add(new Histogram.Bin(left, right, end - before));
      before = end;
    }
    return new Histogram(dimension, all, start, count() - before);
  }
}
