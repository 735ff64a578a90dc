package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.WeldTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fillet welds as a file states them. Without a material they are not checked.
 *
 * @param name what they are called
 * @param part the member that is cut, or the connection whose force they carry
 * @param cut where the member is cut; empty for a connection
 * @param body the body on which the connection acts; empty for a cut
 * @param plane how they lie
 * @param isLeg whether the size is that of a leg; else it is the throat
 * @param size leg or throat in m, above 0
 * @param box width and height in m of a rectangle that is welded all round, its middle the origin
 * @param seams further seams
 * @param material name of the weaker of the joined materials, if stated
 * @param thickness thickness of the joined material in m, by which a table has its strength; if it
 *     is left out, that of the section of the member
 * @param electrode classified strength of the filler metal in Pa, if stated
 */
public record WeldStatement(
    String name,
    String part,
    Optional<FilletWeld.Cut> cut,
    Optional<String> body,
    FilletWeld.Plane plane,
    boolean isLeg,
    double size,
    Optional<Box> box,
    List<FilletWeld.Seam> seams,
    Optional<String> material,
    Optional<Double> thickness,
    Optional<Double> electrode) {

  /**
   * Copies the list.
   *
   * @param name what they are called
   * @param part the member or connection
   * @param cut where the member is cut
   * @param body the body on which the connection acts
   * @param plane how they lie
   * @param isLeg whether the size is that of a leg
   * @param size leg or throat in m, above 0
   * @param box a rectangle that is welded all round
   * @param seams further seams
   * @param material name of the weaker of the joined materials, if stated
   * @param thickness thickness of the joined material in m
   * @param electrode classified strength of the filler metal in Pa, if stated
   */
  public WeldStatement {
    seams = List.copyOf(seams);
  }

  /**
   * A rectangle that is welded all round.
   *
   * @param width width in m, above 0
   * @param height height in m, above 0
   */
  public record Box(double width, double height) {

    /**
     * Checks the sizes.
     *
     * @param width width in m, above 0
     * @param height height in m, above 0
     * @throws ModelException if a size is not above 0
     */
    public Box {
      if (!(width > 0 && height > 0 && Double.isFinite(width) && Double.isFinite(height))) {
        throw new ModelException("weld", "box", width + " by " + height, "two sizes above 0");
      }
    }

    List<FilletWeld.Seam> seams() {
      double x = width / 2;
      double y = height / 2;
      return List.of(
          new FilletWeld.Seam(-x, -y, x, -y),
          new FilletWeld.Seam(x, -y, x, y),
          new FilletWeld.Seam(x, y, -x, y),
          new FilletWeld.Seam(-x, y, -x, -y));
    }
  }

  /** The same with the joined thickness, if it is known. */
  WeldStatement inThickness(Optional<Double> known) {
    return new WeldStatement(
        name, part, cut, body, plane, isLeg, size, box, seams, material, known, electrode);
  }

  /** With some material if none is stated, so that the rest can be checked. */
  WeldStatement completed() {
    return material.isPresent()
        ? this
        : new WeldStatement(
            name,
            part,
            cut,
            body,
            plane,
            isLeg,
            size,
            box,
            seams,
            Optional.of(Materials.ANY),
            thickness.or(() -> Optional.of(size)),
            electrode);
  }

  /** This one, if all that is stated of it can be. */
  WeldStatement checked(Materials materials, Optional<Double> thickest) {
    completed().weld(materials, thickest);
    return this;
  }

  /**
   * What is checked; empty while the material is missing.
   *
   * @param thickest thickness of the member's section in m, if it is stated
   */
  Optional<FilletWeld> weld(Materials materials, Optional<Double> thickest) {
    if (material.isEmpty()) {
      return Optional.empty();
    }
    List<FilletWeld.Seam> lines = new ArrayList<>();
    box.ifPresent(one -> lines.addAll(one.seams()));
    lines.addAll(seams);
    double joined =
        thickness
            .or(() -> thickest)
            .or(() -> Optional.of(1.0).filter(any -> materials.own().containsKey(material.get())))
            .orElseThrow(
                () ->
                    new ModelException(
                        name,
                        "thickness",
                        "none",
                        "the thickness of the joined material, by which its strength is looked"
                            + " up"));
    return Optional.of(
        new FilletWeld(
            name,
            part,
            cut,
            body,
            plane,
            isLeg ? WeldTable.throat(size) : size,
            lines,
            materials.of(material.get(), joined),
            electrode));
  }
}
