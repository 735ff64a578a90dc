package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Force of a pin over an area of the plates, against a share of one of their strengths. Where pin
 * and plate press on one another the lesser strength of both counts.
 *
 * @param place which area
 * @param strength the strength that counts
 * @param share stress that is reached over that strength
 */
record PlateLaw(Place place, Strength strength, double share) implements Law<PlateDemand> {

  /** Where a plate may give way at a pin. */
  enum Place {
    /** The hole: diameter of the pin times thickness. */
    HOLE("F/(n·d·t)") {
      @Override
      double area(PinJoint joint, PinJoint.Plate plate) {
        return joint.diameter() * plate.thickness();
      }
    },
    /** The end: two planes from the edge of the hole. */
    END("F/(n·2·t·(e − d₀/2))") {
      @Override
      double area(PinJoint joint, PinJoint.Plate plate) {
        return 2 * plate.thickness() * (plate.end() - plate.hole() / 2);
      }
    },
    /** Both sides of the hole. */
    SIDES("F/(n·t·(b − d₀))") {
      @Override
      double area(PinJoint joint, PinJoint.Plate plate) {
        return plate.thickness() * (plate.width() - plate.hole());
      }
    };

    private final String formula;

    Place(String formula) {
      this.formula = formula;
    }

    /** Area of one plate in m². */
    abstract double area(PinJoint joint, PinJoint.Plate plate);
  }

  /** In Pa; 0 if it is not known. */
  private double strength(PlateDemand demand) {
    double plate = demand.plate().material().known(strength);
    return place == Place.HOLE ? Math.min(plate, demand.joint().material().known(strength)) : plate;
  }

  @Override
  public Optional<String> lacks(PlateDemand demand) {
    Material plate = demand.plate().material();
    Material weaker = plate.known(strength) > 0 ? demand.joint().material() : plate;
    return strength(demand) > 0
        ? Optional.empty()
        : Optional.of("no " + strength.words() + " of " + weaker.name() + " is stated");
  }

  private double area(PlateDemand demand) {
    return demand.plate().count() * place.area(demand.joint(), demand.plate());
  }

  @Override
  public double demanded(PlateDemand demand) {
    return demand.force() / area(demand);
  }

  @Override
  public double resistance(PlateDemand demand, double factor) {
    return share * strength(demand) / factor;
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
  public String working(PlateDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    return place.formula
        + " = "
        + amounts.force(demand.force())
        + " / "
        + amounts.area(area(demand))
        + " = "
        + amounts.stress(demanded(demand))
        + " against "
        + amounts.divided(resistance(demand, 1), factor);
  }
}
