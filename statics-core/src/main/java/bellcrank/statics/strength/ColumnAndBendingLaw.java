package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Buckling together with bending in the plane: N/N_b + k·M/M_el, the bending enlarged by the
 * deflection that compression works on, k = 1/(1 − N/N_cr). Side bending and lateral torsional
 * buckling are not in it.
 *
 * @param column how the column buckles without bending
 */
record ColumnAndBendingLaw(ColumnLaw column) implements Law<ColumnDemand> {

  /** Nearer to Euler's load the bending grows without bound; the column is long used up there. */
  private static final double NEARLY_EULER = 0.999;

  /** In Pa; 0 if it is not known. */
  private static double bending(Material material) {
    return material.known(Strength.BENDING, Strength.YIELD);
  }

  @Override
  public Optional<String> lacks(ColumnDemand demand) {
    Material material = demand.sized().material();
    return column
        .lacks(demand)
        .or(
            () ->
                bending(material) > 0
                    ? Optional.empty()
                    : Optional.of("no bending strength of " + material.name() + " is stated"));
  }

  private double ofAxial(ColumnDemand demand, double factor) {
    return demand.compression() / column.resistance(demand, factor);
  }

  private static double enlarged(ColumnDemand demand) {
    Section section = demand.sized().section();
    double length = demand.ends().inPlane() * demand.length();
    double euler =
        Math.PI
            * Math.PI
            * demand.sized().material().elasticity()
            * section.inertia()
            / (length * length);
    return 1 / (1 - Math.min(demand.compression() / euler, NEARLY_EULER));
  }

  private static double elastic(ColumnDemand demand, double factor) {
    Section section = demand.sized().section();
    double modulus = Math.min(section.topModulus(), section.bottomModulus());
    return modulus * bending(demand.sized().material()) / factor;
  }

  @Override
  public double demanded(ColumnDemand demand) {
    return ofAxial(demand, 1) + enlarged(demand) * demand.moment() / elastic(demand, 1);
  }

  @Override
  public double resistance(ColumnDemand demand, double factor) {
    return 1 / factor;
  }

  /** Both shares grow, and so does what enlarges the bending. */
  @Override
  public boolean isGrowing() {
    return true;
  }

  @Override
  public Dimension dimension() {
    return Dimension.NUMBER;
  }

  @Override
  public String working(ColumnDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    return "N/N_b + k·M/M_el = "
        + amounts.force(demand.compression())
        + " / "
        + amounts.force(column.resistance(demand, 1))
        + " + "
        + amounts.number(enlarged(demand))
        + " × "
        + amounts.moment(demand.moment())
        + " / "
        + amounts.moment(elastic(demand, 1))
        + " = "
        + amounts.number(demanded(demand))
        + " against 1"
        + amounts.over(factor);
  }
}
