package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Shear stress at the height of the centroid, V·Q/(I·t), against the shear strength, or where none
 * is stated a share of the yield strength.
 *
 * @param shareOfYield shear strength over yield strength
 */
record ShearLaw(double shareOfYield) implements Law<BarDemand> {

  /** In Pa; 0 if it is not known. */
  private double strength(Material material) {
    double own = material.known(Strength.SHEAR);
    return own > 0 ? own : shareOfYield * material.known(Strength.YIELD);
  }

  @Override
  public Optional<String> lacks(BarDemand demand) {
    Material material = demand.sized().material();
    return strength(material) > 0
        ? Optional.empty()
        : Optional.of("neither shear nor yield strength of " + material.name() + " is stated");
  }

  @Override
  public double demanded(BarDemand demand) {
    Section section = demand.sized().section();
    return Math.abs(demand.shear())
        * section.firstMoment()
        / (section.inertia() * section.webWidth());
  }

  @Override
  public double resistance(BarDemand demand, double factor) {
    return strength(demand.sized().material()) / factor;
  }

  @Override
  public double used(BarDemand demand, double factor) {
    double strength = strength(demand.sized().material());
    return strength == 0 ? Double.POSITIVE_INFINITY : demanded(demand) / (strength / factor);
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
    return "V·Q/(I·t) = "
        + amounts.stress(demanded(demand))
        + " with V = "
        + amounts.force(Math.abs(demand.shear()))
        + " against "
        + amounts.divided(resistance(demand, 1), factor);
  }
}
