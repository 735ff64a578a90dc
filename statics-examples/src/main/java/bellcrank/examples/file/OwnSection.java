package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Section;
import java.util.Optional;

/**
 * A cross-section by properties of one's own, as tables print them: areas and lengths alone.
 *
 * @param name how it is called
 * @param area area in m², above 0
 * @param top distance of the top fibre from the centroid in m, above 0
 * @param bottom distance of the bottom fibre from the centroid in m, above 0
 * @param gyration radius of gyration for bending in the plane of the device in m, above 0
 * @param shearArea area that the shear force is divided by for the greatest shear stress, I·t/Q, in
 *     m², above 0
 * @param sideGyration radius of gyration for bending out of the plane in m, above 0
 * @param sideReach distance of the outermost fibre from the centroid square to the plane in m,
 *     above 0
 * @param thickest greatest thickness of the material in m, above 0
 * @param leastGyration radius of gyration about the weak principal axis in m, for a section that
 *     bends askew; empty for a symmetric one
 */
public record OwnSection(
    String name,
    double area,
    double top,
    double bottom,
    double gyration,
    double shearArea,
    double sideGyration,
    double sideReach,
    double thickest,
    Optional<Double> leastGyration)
    implements SectionStatement {

  /**
   * Checks that such a section is possible.
   *
   * @param name how it is called
   * @param area area in m², above 0
   * @param top distance of the top fibre from the centroid in m, above 0
   * @param bottom distance of the bottom fibre from the centroid in m, above 0
   * @param gyration radius of gyration in the plane in m, above 0
   * @param shearArea area for the greatest shear stress in m², above 0
   * @param sideGyration radius of gyration out of the plane in m, above 0
   * @param sideReach distance of the outermost fibre out of the plane in m, above 0
   * @param thickest greatest thickness of the material in m, above 0
   * @param leastGyration radius of gyration about the weak principal axis in m, if it differs
   * @throws ModelException if a property is out of its range
   */
  public OwnSection {
    name = FreeText.check("name", name);
    positive(name, "gyration", gyration);
    positive(name, "side gyration", sideGyration);
    positive(name, "shear area", shearArea);
    double least = Math.min(gyration, sideGyration);
    if (leastGyration.isPresent() && !(leastGyration.get() > 0 && leastGyration.get() <= least)) {
      throw new ModelException(
          name, "least gyration", leastGyration.get(), "above 0 and at most " + least + " m");
    }
    section(
        name,
        area,
        top,
        bottom,
        gyration,
        shearArea,
        sideGyration,
        sideReach,
        thickest,
        leastGyration);
  }

  private static void positive(String name, String field, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new ModelException(name, field, value, "a number above 0");
    }
  }

  @Override
  public Section section() {
    return section(
        name,
        area,
        top,
        bottom,
        gyration,
        shearArea,
        sideGyration,
        sideReach,
        thickest,
        leastGyration);
  }

  private static Section section(
      String name,
      double area,
      double top,
      double bottom,
      double gyration,
      double shearArea,
      double sideGyration,
      double sideReach,
      double thickest,
      Optional<Double> leastGyration) {
    double inertia = area * gyration * gyration;
    double side = area * sideGyration * sideGyration;
    // both products of principal and of other second moments are the determinant of the tensor
    double least = leastGyration.map(radius -> area * radius * radius).orElse(0.0);
    double product =
        least == 0 ? 0 : Math.sqrt(Math.max(0, inertia * side - least * (inertia + side - least)));
    return new Section(
        name,
        area,
        top,
        bottom,
        inertia,
        inertia * thickest / shearArea,
        thickest,
        side,
        sideReach,
        thickest,
        product);
  }
}
