package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Stress at one face from axial force and bending.
 *
 * <p>Where a material has strengths of its own for bending and for axial force, as timber has, the
 * axial stress is weighted by bending strength over axial strength: that is the linear interaction
 * of the timber codes, written as a stress.
 */
record FaceLaw(boolean top) implements Law<BarDemand> {

  @Override
  public Optional<String> lacks(BarDemand demand) {
    Material material = demand.sized().material();
    if (bending(material) == 0) {
      return none("bending", material);
    }
    return demand.normal() != 0 && axial(material, demand.normal()) == 0
        ? none(demand.normal() < 0 ? "compression" : "tension", material)
        : Optional.empty();
  }

  private static Optional<String> none(String strength, Material material) {
    return Optional.of(
        "neither " + strength + " nor yield strength of " + material.name() + " is stated");
  }

  /** How much axial stresses count against those of bending: for compression and for tension. */
  static Set<Double> axialWeights(Material material) {
    Set<Double> weights = new TreeSet<>();
    for (double normal : new double[] {-1, 1}) {
      double axial = axial(material, normal);
      weights.add(axial == 0 ? 1 : bending(material) / axial);
    }
    return weights;
  }

  private static double bending(Material material) {
    return material.known(Strength.BENDING, Strength.YIELD);
  }

  private static double axial(Material material, double normal) {
    return material.known(normal < 0 ? Strength.COMPRESSION : Strength.TENSION, Strength.YIELD);
  }

  private double ofMoment(BarDemand demand) {
    Section section = demand.sized().section();
    return top
        ? -demand.moment() * section.top() / section.inertia()
        : demand.moment() * section.bottom() / section.inertia();
  }

  private static double ofNormal(BarDemand demand) {
    Material material = demand.sized().material();
    return ofNormal(demand, bending(material), axial(material, demand.normal()));
  }

  private static double ofNormal(BarDemand demand, double bending, double axial) {
    return demand.normal() == 0
        ? 0
        : demand.normal() / demand.sized().section().area() * (bending / axial);
  }

  @Override
  public double demanded(BarDemand demand) {
    return Math.abs(ofNormal(demand) + ofMoment(demand));
  }

  @Override
  public double resistance(BarDemand demand, double factor) {
    return bending(demand.sized().material()) / factor;
  }

  @Override
  public double used(BarDemand demand, double factor) {
    Material material = demand.sized().material();
    double bending = bending(material);
    double axial = demand.normal() == 0 ? bending : axial(material, demand.normal());
    return bending == 0 || axial == 0
        ? Double.POSITIVE_INFINITY
        : Math.abs(ofNormal(demand, bending, axial) + ofMoment(demand)) / (bending / factor);
  }

  @Override
  public boolean isProportional() {
    return true;
  }

  @Override
  public Dimension dimension() {
    return Dimension.PRESSURE;
  }

  @Override
  public String working(BarDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    double normal = ofNormal(demand);
    double moment = ofMoment(demand);
    Material material = demand.sized().material();
    boolean weighted = normal != 0 && bending(material) != axial(material, demand.normal());
    String sum =
        moment == 0
            ? ""
            : amounts.stress(normal)
                + (moment < 0 ? " − " : " + ")
                + amounts.stress(Math.abs(moment))
                + " = ";
    return (weighted ? "N/A·f_m/f_n" : "N/A")
        + (moment == 0 ? " = " : " + M/S = ")
        + sum
        + amounts.stress(normal + moment)
        + (normal + moment < 0 ? " (compression)" : " (tension)")
        + " against "
        + amounts.divided(bending(material), factor);
  }
}
