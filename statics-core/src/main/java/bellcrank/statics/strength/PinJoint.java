package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.List;

/**
 * A pin of steel or the like with the plates that it goes through.
 *
 * @param part name of the pin connection
 * @param diameter diameter of the pin in m, above 0
 * @param planes shear planes that share the force of a body: 1 or 2
 * @param material what the pin is made of
 * @param plates the plates of the joined bodies; may be empty
 * @param gap gap between neighbouring plates in m, 0 or more; it bends the pin
 */
public record PinJoint(
    String part, double diameter, int planes, Material material, List<Plate> plates, double gap)
    implements Detail {

  /**
   * Checks the numbers and copies the list.
   *
   * @param part name of the pin connection
   * @param diameter diameter of the pin in m, above 0
   * @param planes shear planes that share the force of a body: 1 or 2
   * @param material what the pin is made of
   * @param plates the plates of the joined bodies; may be empty
   * @param gap gap between neighbouring plates in m, 0 or more
   * @throws ModelException if a number is out of range, or a hole is smaller than the pin
   */
  public PinJoint {
    Positive.check(part, "diameter", diameter);
    Positive.orZero(part, "gap", gap);
    if (planes != 1 && planes != 2) {
      throw new ModelException(part, "shear planes", planes, "1 or 2");
    }
    plates = List.copyOf(plates);
    for (Plate plate : plates) {
      if (plate.hole() < diameter) {
        throw new ModelException(
            part, "hole in " + plate.body(), plate.hole(), "the diameter of the pin or more");
      }
    }
  }

  /**
   * The plates by which one body sits on the pin; equal ones are counted.
   *
   * @param body name of the body, as the pin joins it
   * @param count number of equal plates of one part of the body, 1 or more
   * @param thickness thickness of one in m, above 0
   * @param hole diameter of the hole in m
   * @param end distance from the centre of the hole to the end of the plate in m, above half the
   *     hole
   * @param width width of the plate at the hole in m, above the hole
   * @param material what it is made of
   */
  public record Plate(
      String body,
      int count,
      double thickness,
      double hole,
      double end,
      double width,
      Material material) {

    /**
     * Checks the numbers.
     *
     * @param body name of the body, as the pin joins it
     * @param count number of equal plates, 1 or more
     * @param thickness thickness of one in m, above 0
     * @param hole diameter of the hole in m, above 0
     * @param end distance from the centre of the hole to the end in m, above half the hole
     * @param width width of the plate at the hole in m, above the hole
     * @param material what it is made of
     * @throws ModelException if a number is out of range
     */
    public Plate {
      String name = "plate of " + body;
      if (count < 1) {
        throw new ModelException(name, "count", count, "a whole number of 1 or more");
      }
      Positive.check(name, "thickness", thickness);
      Positive.check(name, "hole", hole);
      if (!(end > hole / 2 && Double.isFinite(end))) {
        throw new ModelException(name, "end", end, "more than half the hole, " + hole / 2 + " m");
      }
      if (!(width > hole && Double.isFinite(width))) {
        throw new ModelException(name, "width", width, "more than the hole, " + hole + " m");
      }
    }
  }
}
