package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Mean shear stress in a pin against a share of one of its strengths.
 *
 * @param strength the strength that counts
 * @param share shear strength over that strength
 */
record PinShearLaw(Strength strength, double share) implements Law<PinDemand> {

  @Override
  public Optional<String> lacks(PinDemand demand) {
    Material material = demand.joint().material();
    return material.known(strength) > 0
        ? Optional.empty()
        : Optional.of("no " + strength.words() + " of " + material.name() + " is stated");
  }

  private static double area(PinJoint joint) {
    return Math.PI * joint.diameter() * joint.diameter() / 4;
  }

  @Override
  public double demanded(PinDemand demand) {
    return demand.force() / (demand.joint().planes() * area(demand.joint()));
  }

  @Override
  public double resistance(PinDemand demand, double factor) {
    return share * demand.joint().material().known(strength) / factor;
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
  public String working(PinDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    int planes = demand.joint().planes();
    return "F/(n·π·d²/4) = "
        + amounts.force(demand.force())
        + " / ("
        + planes
        + " × "
        + amounts.area(area(demand.joint()))
        + ") = "
        + amounts.stress(demanded(demand))
        + (planes == 1 ? ", single shear," : ", double shear,")
        + " against "
        + amounts.divided(resistance(demand, 1), factor);
  }
}
