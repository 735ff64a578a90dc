package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * What a flat base of given size sends into the ground.
 *
 * @param normal normal force N in N, pushing, 0 or more; it includes the weight of the base
 * @param tangential force H along the width of the base in N, positive to the right; only its size
 *     matters
 * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
 *     positive with the push upwards
 * @param width width B of the base in the plane in m, above 0
 * @param length length L of the base out of the plane in m, above 0
 */
public record BaseLoad(
    double normal, double tangential, double couple, double width, double length) {

  private static final String PART = "base";

  /**
   * Checks the fields.
   *
   * @param normal normal force N in N, pushing, 0 or more; it includes the weight of the base
   * @param tangential force H along the width of the base in N, positive to the right; only its
   *     size matters
   * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
   *     positive with the push upwards
   * @param width width B of the base in the plane in m, above 0
   * @param length length L of the base out of the plane in m, above 0
   * @throws ModelException if a field is out of its range or not finite
   */
  public BaseLoad {
    normal = Check.notNegative(PART, "normal force", normal);
    tangential = Check.finite(PART, "tangential force", tangential);
    couple = Check.finite(PART, "couple", couple);
    Check.positive(PART, "width", width);
    Check.positive(PART, "length", length);
  }

  /**
   * The elastic pressure of the normal force and the couple.
   *
   * @return the pressure
   */
  public BasePressure pressure() {
    return BasePressure.of(normal, couple, width, length);
  }
}
