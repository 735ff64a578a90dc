package bellcrank.statics.drawing;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture of how often a number takes which values: upright bars over its range, with lines at
 * values that matter, such as a percentile or a target. What the bars do not show is told below.
 */
public final class HistogramDrawing {

  private final String heading;
  private final Dimension dimension;
  private final List<Bin> bins;
  private final List<Mark> marks;
  private final List<String> notes;
  private final UnitSystem units;

  private HistogramDrawing(
      String heading,
      Dimension dimension,
      List<Bin> bins,
      List<Mark> marks,
      List<String> notes,
      UnitSystem units) {
    this.heading = heading;
    this.dimension = dimension;
    this.bins = List.copyOf(bins);
    this.marks = List.copyOf(marks);
    this.notes = List.copyOf(notes);
    this.units = units;
  }

  /**
   * One bar.
   *
   * @param from least value that it counts, SI
   * @param to value at which it ends, above the least, SI
   * @param count how many values lie between, 0 or more
   */
  public record Bin(double from, double to, long count) {

    /**
     * Checks the numbers.
     *
     * @param from least value that it counts, SI
     * @param to value at which it ends, above the least, SI
     * @param count how many values lie between, 0 or more
     * @throws ModelException if an end is not finite, they are not in order, or the count is
     *     negative
     */
    public Bin {
      if (!Double.isFinite(from) || !Double.isFinite(to) || !(from < to)) {
        throw new ModelException(
            "histogram", "bin", from + " to " + to, "finite ends, least first");
      }
      if (count < 0) {
        throw new ModelException("histogram", "count", count, "0 or more");
      }
    }
  }

  /** What a line in the picture stands for. */
  public enum Kind {
    /** A value below which a share of all lies: a thin broken line. */
    SHARE,
    /** A value that is to be kept: a thick line. */
    TARGET,
    /** The value without any uncertainty: a dotted line. */
    STATED
  }

  /**
   * A line at a value.
   *
   * @param kind what it stands for
   * @param value where it is, SI
   * @param label a word or two at the line, such as {@code 95 %}
   * @param words what it means, in the key
   */
  public record Mark(Kind kind, double value, String label, String words) {

    /**
     * Checks the value.
     *
     * @param kind what it stands for
     * @param value where it is, SI
     * @param label a word or two at the line
     * @param words what it means, in the key
     * @throws ModelException if the value is not finite
     */
    public Mark {
      if (!Double.isFinite(value)) {
        throw new ModelException("histogram", "mark", value, "a finite number");
      }
    }
  }

  /**
   * A picture without marks, values in SI units.
   *
   * @param heading what the picture is of, in one line
   * @param dimension kind of quantity of the values
   * @param bins the bars from left to right, at least one, each beginning where the last one ends
   * @return the drawing
   * @throws ModelException if there is no bin, or bins leave a gap or overlap
   */
  public static HistogramDrawing of(String heading, Dimension dimension, List<Bin> bins) {
    if (bins.isEmpty()) {
      throw new ModelException(heading, "bins", "none", "at least one");
    }
    for (int k = 1; k < bins.size(); k++) {
      if (bins.get(k).from() != bins.get(k - 1).to()) {
        throw new ModelException(
            heading, "bin " + (k + 1), bins.get(k).from(), "a start at " + bins.get(k - 1).to());
      }
    }
    return new HistogramDrawing(heading, dimension, bins, List.of(), List.of(), UnitSystem.SI);
  }

  /**
   * This drawing with one more line. A value that no bar covers widens the picture.
   *
   * @param mark the line
   * @return a copy
   */
  public HistogramDrawing with(Mark mark) {
    List<Mark> more = new ArrayList<>(marks);
    more.add(mark);
    return new HistogramDrawing(heading, dimension, bins, more, notes, units);
  }

  /**
   * This drawing with a sentence below, such as how many samples had no value.
   *
   * @param note the sentence
   * @return a copy
   */
  public HistogramDrawing withNote(String note) {
    List<String> more = new ArrayList<>(notes);
    more.add(note);
    return new HistogramDrawing(heading, dimension, bins, marks, more, units);
  }

  /**
   * This drawing with other units.
   *
   * @param other units of all values
   * @return a copy
   */
  public HistogramDrawing withUnits(UnitSystem other) {
    return new HistogramDrawing(heading, dimension, bins, marks, notes, other);
  }

  /**
   * The bars.
   *
   * @return from left to right
   */
  public List<Bin> bins() {
    return bins;
  }

  /**
   * The lines.
   *
   * @return in the order in which they were put in
   */
  public List<Mark> marks() {
    return marks;
  }

  /**
   * The picture.
   *
   * @return an SVG document with title and description; each bar carries {@code data-from}, {@code
   *     data-to} (SI) and {@code data-count}, each line {@code data-value} and {@code data-mark},
   *     the picture {@code data-units-per-si} and {@code data-units-per-count}
   */
  public String svg() {
    return new HistogramPicture(heading, dimension, bins, marks, notes, units).svg();
  }
}
