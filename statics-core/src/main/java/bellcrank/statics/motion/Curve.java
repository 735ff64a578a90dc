package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * How a number changes over a course.
 *
 * @param ask what was asked
 * @param dimension what kind of quantity it is
 * @param samples values at even steps of the drive, both ends among them, in ascending order; where
 *     there is no value there is no sample
 * @param least the least value on the way, found beyond the samples; empty if there is no value
 * @param greatest the greatest value
 */
public record Curve(
    Ask ask,
    Dimension dimension,
    List<Sample> samples,
    Optional<Sample> least,
    Optional<Sample> greatest) {

  /**
   * Copies the list.
   *
   * @param ask what was asked
   * @param dimension what kind of quantity it is
   * @param samples values at even steps of the drive
   * @param least the least value on the way
   * @param greatest the greatest value
   */
  public Curve {
    samples = List.copyOf(samples);
  }

  /** An extreme that is so many times as large as all samples is where the number has no bound. */
  private static final double BOUNDLESS = 1e5;

  /**
   * Whether the number grows beyond all bounds at an extreme, as a ratio does where what it is
   * divided by passes through 0. The value of the extreme then only tells how near the search came.
   *
   * @param extreme the least or the greatest value of this curve
   * @return true if it is many times as large as all samples
   */
  public boolean isBoundless(Sample extreme) {
    double largest = samples.stream().mapToDouble(one -> Math.abs(one.value())).max().orElse(0);
    return largest > 0 && Math.abs(extreme.value()) > BOUNDLESS * largest;
  }

  /**
   * A value on the way.
   *
   * @param drive value of the drive, in rad or m from the drawn pose
   * @param value the number in SI units
   */
  public record Sample(double drive, double value) {}
}
