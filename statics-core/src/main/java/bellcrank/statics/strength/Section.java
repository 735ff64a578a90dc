package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/**
 * The cross-section of a bar, by its properties about the axes through its centroid.
 *
 * <p>The height lies in the plane of the device, the width square to it. Seen along a bar from its
 * start to its end, the top is on the left: for a bar drawn from left to right it is up.
 *
 * @param name how it is called, such as {@code tube 60 × 40 × 3 mm}
 * @param area area in m², above 0
 * @param top distance of the top fibre from the centroid in m, above 0
 * @param bottom distance of the bottom fibre from the centroid in m, above 0
 * @param inertia second moment of area for bending in the plane of the device in m⁴, above 0
 * @param firstMoment first moment about the centroid of the part above it in m³, above 0
 * @param webWidth width of the material at the height of the centroid, all webs together, in m,
 *     above 0; the shear stress there is V·Q/(I·t)
 * @param sideInertia second moment of area for bending out of the plane in m⁴, above 0
 * @param sideReach distance of the outermost fibre from the centroid square to the plane in m,
 *     above 0
 * @param thickest greatest thickness of the material in m, above 0; strengths depend on it
 */
public record Section(
    String name,
    double area,
    double top,
    double bottom,
    double inertia,
    double firstMoment,
    double webWidth,
    double sideInertia,
    double sideReach,
    double thickest) {

  /**
   * Checks that all properties are finite and above zero.
   *
   * @param name how it is called
   * @param area area in m², above 0
   * @param top distance of the top fibre from the centroid in m, above 0
   * @param bottom distance of the bottom fibre from the centroid in m, above 0
   * @param inertia second moment of area for bending in the plane of the device in m⁴, above 0
   * @param firstMoment first moment about the centroid of the part above it in m³, above 0
   * @param webWidth width of the material at the height of the centroid in m, above 0
   * @param sideInertia second moment of area for bending out of the plane in m⁴, above 0
   * @param sideReach distance of the outermost fibre from the centroid square to the plane in m,
   *     above 0
   * @param thickest greatest thickness of the material in m, above 0
   * @throws ModelException if a property is not finite or not above 0
   */
  public Section {
    positive(name, "area", area);
    positive(name, "top", top);
    positive(name, "bottom", bottom);
    positive(name, "inertia", inertia);
    positive(name, "first moment", firstMoment);
    positive(name, "web width", webWidth);
    positive(name, "side inertia", sideInertia);
    positive(name, "side reach", sideReach);
    positive(name, "thickness", thickest);
  }

  private static void positive(String name, String field, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new ModelException(name, field, value, "a number above 0");
    }
  }

  /**
   * Section modulus of the top fibre, I / top.
   *
   * @return in m³
   */
  public double topModulus() {
    return inertia / top;
  }

  /**
   * Section modulus of the bottom fibre, I / bottom.
   *
   * @return in m³
   */
  public double bottomModulus() {
    return inertia / bottom;
  }

  /**
   * Radius of gyration for bending in the plane, √(I/A).
   *
   * @return in m
   */
  public double gyration() {
    return Math.sqrt(inertia / area);
  }

  /**
   * Radius of gyration for bending out of the plane.
   *
   * @return in m
   */
  public double sideGyration() {
    return Math.sqrt(sideInertia / area);
  }

  /**
   * Mass per length of a bar of this section.
   *
   * @param density in kg/m³, above 0
   * @return in kg/m
   */
  public double massPerLength(double density) {
    return area * density;
  }
}
