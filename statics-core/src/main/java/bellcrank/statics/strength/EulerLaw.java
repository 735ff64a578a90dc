package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/** Compression against Euler's load π²·E·I/(k·L)². */
record EulerLaw() implements Law<ColumnDemand> {

  @Override
  public Optional<String> lacks(ColumnDemand demand) {
    return Optional.empty();
  }

  @Override
  public double demanded(ColumnDemand demand) {
    return demand.compression();
  }

  @Override
  public double resistance(ColumnDemand demand, double factor) {
    double stress = Slenderness.of(demand).eulerStress(demand.sized().material());
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
    return "N = "
        + amounts.force(demand.compression())
        + " against π²·E·I/(k·L)² = "
        + amounts.force(resistance(demand, 1))
        + amounts.over(factor)
        + (factor == 1 ? "" : " = " + amounts.force(resistance(demand, factor)))
        + "; "
        + Slenderness.of(demand).words(demand, amounts);
  }
}
