package bellcrank.statics.drawing;

import bellcrank.statics.units.UnitSystem;
import java.util.List;

/**
 * What is shown in a drawing, and how.
 *
 * @param units units of all values
 * @param arrows how lengths of arrows follow from forces
 * @param components whether forces of connections are drawn as two components, such as x and y
 * @param automatic whether a few distances and angles are chosen for you
 * @param measurements distances and angles besides
 * @param arms moment arms
 */
public record DrawingOptions(
    UnitSystem units,
    ArrowScale arrows,
    boolean components,
    boolean automatic,
    List<Measurement> measurements,
    List<MomentArm> arms) {

  /** SI units, arrows in proportion, whole forces, a few measurements chosen for you. */
  public static final DrawingOptions USUAL =
      new DrawingOptions(UnitSystem.SI, ArrowScale.LINEAR, false, true, List.of(), List.of());

  /**
   * Copies the lists.
   *
   * @param units units of all values
   * @param arrows how lengths of arrows follow from forces
   * @param components whether forces of connections are drawn as two components, such as x and y
   * @param automatic whether a few distances and angles are chosen for you
   * @param measurements distances and angles besides
   * @param arms moment arms
   */
  public DrawingOptions {
    measurements = List.copyOf(measurements);
    arms = List.copyOf(arms);
  }

  /**
   * These options with other units.
   *
   * @param other units of all values
   * @return a copy
   */
  public DrawingOptions withUnits(UnitSystem other) {
    return new DrawingOptions(other, arrows, components, automatic, measurements, arms);
  }

  /**
   * These options with another scale of arrows.
   *
   * @param other how lengths follow from forces
   * @return a copy
   */
  public DrawingOptions withArrows(ArrowScale other) {
    return new DrawingOptions(units, other, components, automatic, measurements, arms);
  }

  /**
   * These options with components instead of whole forces.
   *
   * @return a copy
   */
  public DrawingOptions withComponents() {
    return new DrawingOptions(units, arrows, true, automatic, measurements, arms);
  }

  /**
   * These options with these measurements instead of chosen ones.
   *
   * @param wanted distances and angles; none for a drawing without any
   * @return a copy
   */
  public DrawingOptions withMeasurements(List<Measurement> wanted) {
    return new DrawingOptions(units, arrows, components, false, wanted, arms);
  }

  /**
   * These options with a moment arm besides.
   *
   * @param force name of the part whose force it is
   * @param about name of the point about which the moment is taken
   * @return a copy
   */
  public DrawingOptions withArm(String force, String about) {
    List<MomentArm> more = new java.util.ArrayList<>(arms);
    more.add(new MomentArm(force, about));
    return new DrawingOptions(units, arrows, components, automatic, measurements, more);
  }
}
