package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/**
 * The cross-section of a bar, by its properties about the axes through its centroid.
 *
 * <p>The height lies in the plane of the device, the width square to it. Seen along a bar from its
 * start to its end, the top is on the left: for a bar drawn from left to right it is up.
 *
 * <p>A section whose product of inertia is not zero, such as an angle, bends askew: under a moment
 * in the plane of the device it also gives way out of the plane, and stresses by M/S are then only
 * an approximation, good where the bar is held sideways. {@link #symmetric} tells. A column of it
 * buckles about its weak principal axis, {@link #leastGyration}.
 *
 * <p>Properties from a table or of one's own are given here as they are; {@link Profile#section}
 * works them out from a drawn cross-section.
 *
 * @param name how it is called, such as {@code tube 60 × 40 × 3 mm}
 * @param area area in m², above 0
 * @param top distance of the top fibre from the centroid in m, above 0
 * @param bottom distance of the bottom fibre from the centroid in m, above 0
 * @param inertia second moment of area for bending in the plane of the device in m⁴, above 0
 * @param firstMoment first moment Q about the centroid of the part above it in m³, above 0; where
 *     there is no material at the centroid, or it is narrower elsewhere, of the part beyond the
 *     height at which Q/t is greatest
 * @param webWidth width t of the material at that height, all webs together, in m, above 0; the
 *     shear stress there is V·Q/(I·t)
 * @param sideInertia second moment of area for bending out of the plane in m⁴, above 0
 * @param sideReach distance of the outermost fibre from the centroid square to the plane in m,
 *     above 0
 * @param thickest greatest thickness of the material in m, above 0; strengths depend on it
 * @param productOfInertia ∫xy dA about the centroid in m⁴, x out of the plane, y up; 0 if the
 *     section is symmetric about one of the two
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
    double thickest,
    double productOfInertia) {

  /** A product of inertia below this share of the second moments is rounding. */
  private static final double ASKEW = 1e-9;

  /**
   * Checks that all properties are finite and above zero, and that they fit together.
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
   * @param productOfInertia product of inertia about the centroid in m⁴; 0 if symmetric
   * @throws ModelException if a property is not finite or not above 0, or if no area of this size
   *     can have these second moments within these edges
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
    // no fibre is farther off than the edges: ∫(top − y)(y + bottom) dA ≥ 0, a slip of the unit
    // shows
    atMost(name, "inertia", inertia, area * top * bottom * (1 + ASKEW));
    atMost(name, "side inertia", sideInertia, area * sideReach * sideReach * (1 + ASKEW));
    double bound = Math.sqrt(inertia * sideInertia);
    if (!(Math.abs(productOfInertia) < bound)) {
      throw new ModelException(
          name, "product of inertia", productOfInertia, "between −" + bound + " and " + bound);
    }
  }

  /**
   * A section that is symmetric about one of its axes.
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
   * @throws ModelException if a property is not finite or not above 0, or if no area of this size
   *     can have these second moments within these edges
   */
  public Section(
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
    this(
        name,
        area,
        top,
        bottom,
        inertia,
        firstMoment,
        webWidth,
        sideInertia,
        sideReach,
        thickest,
        0);
  }

  private static void atMost(String name, String field, double value, double bound) {
    if (value > bound) {
      throw new ModelException(
          name, field, value, "at most " + bound + " m⁴, what area and edges allow");
    }
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
   * Whether the plane of the device is a principal direction of bending, so that the bar bends in
   * it alone.
   *
   * @return whether the product of inertia vanishes
   */
  public boolean symmetric() {
    return Math.abs(productOfInertia) <= ASKEW * Math.sqrt(inertia * sideInertia);
  }

  /**
   * The smaller principal second moment of area, that of the direction in which the section bends
   * most easily.
   *
   * @return in m⁴, at most the smaller of the two others
   */
  public double leastInertia() {
    if (symmetric()) {
      return Math.min(inertia, sideInertia);
    }
    double radius = Math.hypot((inertia - sideInertia) / 2, productOfInertia);
    return (inertia + sideInertia) / 2 - radius;
  }

  /**
   * The larger principal second moment of area.
   *
   * @return in m⁴
   */
  public double greatestInertia() {
    return inertia + sideInertia - leastInertia();
  }

  /**
   * Radius of gyration about the weak principal axis, which decides the buckling of angles.
   *
   * @return in m
   */
  public double leastGyration() {
    return Math.sqrt(leastInertia() / area);
  }

  /**
   * Several of these that share the load and are not joined, so that sideways each bends for
   * itself. Those that are joined are told by {@link Profile#sideBySide}.
   *
   * @param count how many, 1 or more
   * @return all of them together
   * @throws ModelException if the count is below 1
   */
  public Section times(int count) {
    if (count < 1) {
      throw new ModelException(name, "count", count, "1 or more");
    }
    return new Section(
        count + " × " + name,
        count * area,
        top,
        bottom,
        count * inertia,
        count * firstMoment,
        count * webWidth,
        count * sideInertia,
        sideReach,
        thickest,
        count * productOfInertia);
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
