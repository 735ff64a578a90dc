package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Bending of a pin between an inner plate b and two outer plates a with gaps c: M = F·(b + 4c +
 * 2a)/8.
 *
 * <p>Source of the moment: EN 1993-1-8:2005, Figure 3.11.
 *
 * @param share bending strength over yield strength
 */
record PinBendingLaw(double share) implements Law<PinDemand> {

  /** The plate in the middle, and one of those outside. */
  private record Sandwich(PinJoint.Plate inner, PinJoint.Plate outer) {}

  private static Optional<Sandwich> sandwich(PinJoint joint) {
    if (joint.plates().size() != 2 || joint.planes() != 2) {
      return Optional.empty();
    }
    PinJoint.Plate first = joint.plates().get(0);
    PinJoint.Plate second = joint.plates().get(1);
    if (first.count() == 1 && second.count() == 2) {
      return Optional.of(new Sandwich(first, second));
    }
    return first.count() == 2 && second.count() == 1
        ? Optional.of(new Sandwich(second, first))
        : Optional.empty();
  }

  @Override
  public Optional<String> lacks(PinDemand demand) {
    if (sandwich(demand.joint()).isEmpty()) {
      return Optional.of(
          "bending of a pin is worked out for double shear, one plate between a pair of plates");
    }
    Material material = demand.joint().material();
    return material.known(Strength.YIELD) > 0
        ? Optional.empty()
        : Optional.of("no yield strength of " + material.name() + " is stated");
  }

  private static double modulus(PinJoint joint) {
    return Math.PI * Math.pow(joint.diameter(), 3) / 32;
  }

  private static double moment(PinDemand demand) {
    Sandwich plates = sandwich(demand.joint()).orElseThrow();
    double span =
        plates.inner().thickness() + 4 * demand.joint().gap() + 2 * plates.outer().thickness();
    return demand.force() * span / 8;
  }

  @Override
  public double demanded(PinDemand demand) {
    return moment(demand) / modulus(demand.joint());
  }

  @Override
  public double resistance(PinDemand demand, double factor) {
    return share * demand.joint().material().known(Strength.YIELD) / factor;
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
    return "M/W with M = F·(b + 4c + 2a)/8 = "
        + amounts.moment(moment(demand))
        + ": "
        + amounts.stress(demanded(demand))
        + " against "
        + amounts.divided(resistance(demand, 1), factor);
  }
}
