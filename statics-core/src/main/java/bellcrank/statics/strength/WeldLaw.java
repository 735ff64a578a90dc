package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * Force per length over the throat of a fillet weld, against the strength of the weld metal.
 *
 * @param metal how the strength is found
 */
record WeldLaw(Metal metal) implements Law<WeldDemand> {

  private static final double S235 = inTable("S235");
  private static final double S275 = inTable("S275");
  private static final double S355 = inTable("S355");

  private static double inTable(String grade) {
    return WeldTable.named("correlation factor " + grade).value().low();
  }

  /** How the strength of weld metal is found. */
  enum Metal {
    /** f_u/(√3·β_w) of the joined parts: EN 1993-1-8, 4.5.3.3. */
    JOINED_PARTS("f_u/(√3·β_w)"),
    /** 0.6·F_EXX of the electrode: AISC 360, J2.4. */
    ELECTRODE("0.6·F_EXX"),
    /** The same, raised by 1 + 0.5·sin^1.5 θ for a force at θ to the seam: AISC 360, J2-5. */
    ELECTRODE_BY_DIRECTION("0.6·F_EXX·(1 + 0.5·sin^1.5 θ)");

    private final String formula;

    Metal(String formula) {
      this.formula = formula;
    }
  }

  /** The correlation factor for a steel of some ultimate strength; 1 beyond that of S355. */
  static double correlation(double ultimate) {
    if (ultimate <= 360e6) {
      return S235;
    }
    if (ultimate <= 430e6) {
      return S275;
    }
    return ultimate <= 510e6 ? S355 : 1.0;
  }

  @Override
  public Optional<String> lacks(WeldDemand demand) {
    FilletWeld weld = demand.weld();
    if (weld.material().kind() != Material.Kind.STEEL) {
      return Optional.of("no weld rule for " + weld.material().name() + " is among the rules");
    }
    if (metal == Metal.JOINED_PARTS) {
      return weld.material().known(Strength.ULTIMATE) > 0
          ? Optional.empty()
          : Optional.of("no ultimate strength of " + weld.material().name() + " is stated");
    }
    return weld.electrode().isPresent()
        ? Optional.empty()
        : Optional.of("the strength of the electrode is not stated");
  }

  @Override
  public double demanded(WeldDemand demand) {
    return demand.size() / demand.weld().throat();
  }

  @Override
  public double resistance(WeldDemand demand, double factor) {
    FilletWeld weld = demand.weld();
    if (metal == Metal.JOINED_PARTS) {
      double ultimate = weld.material().known(Strength.ULTIMATE);
      return ultimate / (Math.sqrt(3) * correlation(ultimate)) / factor;
    }
    double strength = 0.6 * weld.electrode().orElseThrow() / factor;
    if (metal == Metal.ELECTRODE || demand.size() == 0) {
      return strength;
    }
    return strength
        * WeldTable.directionalFactor(Math.asin(Math.min(1, demand.across() / demand.size())));
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
  public String working(WeldDemand demand, double factor, UnitSystem units) {
    Amounts amounts = new Amounts(units);
    return "f/a = "
        + amounts.perLength(demand.size())
        + " / "
        + amounts.size(demand.weld().throat())
        + " = "
        + amounts.stress(demanded(demand))
        + " against "
        + metal.formula
        + " = "
        + amounts.divided(resistance(demand, 1), factor);
  }
}
