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

  /**
   * A value on the way.
   *
   * @param drive value of the drive, in rad or m from the drawn pose
   * @param value the number in SI units
   */
  public record Sample(double drive, double value) {}
}
