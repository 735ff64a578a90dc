package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Compression against the load at which a column buckles by the curve of a code.
 *
 * @param steel curve for steel; timber has its own
 */
record ColumnLaw(ColumnCurve steel) implements Law<ColumnDemand> {

  private static final ColumnCurve TIMBER = new ColumnCurve.Timber();

  private ColumnCurve curve(ColumnDemand demand) {
    return demand.sized().material().kind() == Kind.TIMBER ? TIMBER : steel;
  }

  @Override
  public Optional<String> lacks(ColumnDemand demand) {
    return curve(demand).lacks(demand.sized().material());
  }

  @Override
  public double demanded(ColumnDemand demand) {
    return demand.compression();
  }

  @Override
  public double resistance(ColumnDemand demand, double factor) {
    double stress = curve(demand).stress(Slenderness.of(demand), demand);
    return stress * demand.sized().section().area() / factor;
  }

  @Override
  public boolean isProportional() {
    return true;
  }

  @Override
  public Dimension dimension() {
    return Dimension.FORCE;
  }

  @Override
  public String working(ColumnDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    Slenderness slenderness = Slenderness.of(demand);
    return "N = "
        + amounts.force(demand.compression())
        + " against "
        + amounts.stress(curve(demand).stress(slenderness, demand))
        + " × "
        + amounts.area(demand.sized().section().area())
        + amounts.over(factor)
        + (" = " + amounts.force(resistance(demand, factor)))
        + "; "
        + slenderness.words(demand, amounts);
  }
}
