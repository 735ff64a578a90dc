package bellcrank.examples.file;

import bellcrank.statics.strength.PinJoint;
import java.util.List;
import java.util.Optional;

/**
 * A pin with the plates that it goes through, as a file states it. Without all materials it is not
 * checked.
 *
 * @param part name of the pin connection
 * @param diameter diameter of the pin in m, above 0
 * @param planes shear planes that share the force of a body: 1 or 2
 * @param material name of the material of the pin, if stated
 * @param plates the plates; may be empty
 * @param gap gap between neighbouring plates in m, 0 or more
 */
public record PinStatement(
    String part,
    double diameter,
    int planes,
    Optional<String> material,
    List<PlateStatement> plates,
    double gap) {

  /**
   * Copies the list.
   *
   * @param part name of the pin connection
   * @param diameter diameter of the pin in m, above 0
   * @param planes shear planes: 1 or 2
   * @param material name of the material of the pin, if stated
   * @param plates the plates
   * @param gap gap between neighbouring plates in m, 0 or more
   */
  public PinStatement {
    plates = List.copyOf(plates);
  }

  /**
   * Equal plates by which a body sits on a pin.
   *
   * @param on name of the body
   * @param count number of equal plates, 1 or more
   * @param thickness thickness of one in m, above 0
   * @param hole diameter of the hole in m
   * @param end distance from the centre of the hole to the end of the plate in m
   * @param width width of the plate at the hole in m
   * @param material name of its material, if stated
   */
  public record PlateStatement(
      String on,
      int count,
      double thickness,
      double hole,
      double end,
      double width,
      Optional<String> material) {}

  /** With some material in place of each that is not stated, so that the rest can be checked. */
  PinStatement completed() {
    Optional<String> any = Optional.of(Materials.ANY);
    List<PlateStatement> whole =
        plates.stream()
            .map(
                plate ->
                    new PlateStatement(
                        plate.on(),
                        plate.count(),
                        plate.thickness(),
                        plate.hole(),
                        plate.end(),
                        plate.width(),
                        plate.material().or(() -> any)))
            .toList();
    return new PinStatement(part, diameter, planes, material.or(() -> any), whole, gap);
  }

  /** This one, if all that is stated of it can be. */
  PinStatement checked(Materials materials) {
    completed().joint(materials);
    return this;
  }

  /** What is checked; empty while a material is missing. */
  Optional<PinJoint> joint(Materials materials) {
    if (material.isEmpty() || plates.stream().anyMatch(plate -> plate.material().isEmpty())) {
      return Optional.empty();
    }
    List<PinJoint.Plate> made =
        plates.stream()
            .map(
                plate ->
                    new PinJoint.Plate(
                        plate.on(),
                        plate.count(),
                        plate.thickness(),
                        plate.hole(),
                        plate.end(),
                        plate.width(),
                        materials.of(plate.material().orElseThrow(), plate.thickness())))
            .toList();
    return Optional.of(
        new PinJoint(part, diameter, planes, materials.of(material.get(), diameter), made, gap));
  }
}
