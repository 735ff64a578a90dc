package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import java.util.List;

/**
 * How many samples of a figure lie in which range.
 *
 * @param dimension what kind of quantity it is
 * @param bins ranges of the same width from left to right, each beginning where the last one ends
 * @param below samples below all ranges
 * @param above samples above all ranges
 */
public record Histogram(Dimension dimension, List<Bin> bins, long below, long above) {

  /**
   * Copies the ranges.
   *
   * @param dimension what kind of quantity it is
   * @param bins ranges from left to right
   * @param below samples below all ranges
   * @param above samples above all ranges
   */
  public Histogram {
    bins = List.copyOf(bins);
  }

  /**
   * A range.
   *
   * @param from least value that it counts, SI
   * @param to value at which it ends, SI; only the last range counts it as well
   * @param count how many samples lie in it
   */
  public record Bin(double from, double to, long count) {}
}
