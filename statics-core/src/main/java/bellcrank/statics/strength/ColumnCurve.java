package bellcrank.statics.strength;

import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import java.util.Optional;

/** Critical stress of a column by the curve of a code, before any factor. */
sealed interface ColumnCurve {

  /** What the curve would need and the material does not state. */
  Optional<String> lacks(Material material);

  /** The stress at which the column buckles, in Pa. */
  double stress(Slenderness slenderness, ColumnDemand demand);

  private static Optional<String> needs(Material material, Kind kind, Strength strength) {
    if (material.kind() != kind) {
      return Optional.of("no column curve for " + material.name() + " is among the rules");
    }
    return material.known(strength) > 0
        ? Optional.empty()
        : Optional.of("no " + strength.words() + " of " + material.name() + " is stated");
  }

  /** Steel by EN 1993-1-1, 6.3.1.2. */
  record Perry() implements ColumnCurve {
    @Override
    public Optional<String> lacks(Material material) {
      return needs(material, Kind.STEEL, Strength.YIELD);
    }

    @Override
    public double stress(Slenderness slenderness, ColumnDemand demand) {
      Material material = demand.sized().material();
      double yield = material.known(Strength.YIELD);
      double relative = slenderness.ratio() / (Math.PI * Math.sqrt(material.elasticity() / yield));
      if (relative <= 0.2) {
        return yield;
      }
      double alpha = demand.ends().curve().imperfection();
      double phi = (1 + alpha * (relative - 0.2) + relative * relative) / 2;
      return yield / (phi + Math.sqrt(phi * phi - relative * relative));
    }
  }

  /** Steel by AISC 360, E3. */
  record American() implements ColumnCurve {
    @Override
    public Optional<String> lacks(Material material) {
      return needs(material, Kind.STEEL, Strength.YIELD);
    }

    @Override
    public double stress(Slenderness slenderness, ColumnDemand demand) {
      Material material = demand.sized().material();
      double yield = material.known(Strength.YIELD);
      double euler = slenderness.eulerStress(material);
      return slenderness.ratio() <= 4.71 * Math.sqrt(material.elasticity() / yield)
          ? Math.pow(0.658, yield / euler) * yield
          : 0.877 * euler;
    }
  }

  /**
   * Timber by EN 1995-1-1, 6.3.2: β_c = 0.2 for solid timber, E₀.₀₅ = 0.67·E.
   *
   * <p>From memory.
   */
  record Timber() implements ColumnCurve {
    private static final double STRAIGHTNESS = 0.2;
    private static final double LOW_SHARE = 0.67;

    @Override
    public Optional<String> lacks(Material material) {
      return needs(material, Kind.TIMBER, Strength.COMPRESSION);
    }

    @Override
    public double stress(Slenderness slenderness, ColumnDemand demand) {
      Material material = demand.sized().material();
      double strength = material.known(Strength.COMPRESSION);
      double low = LOW_SHARE * material.elasticity();
      double relative = slenderness.ratio() / Math.PI * Math.sqrt(strength / low);
      if (relative <= 0.3) {
        return strength;
      }
      double k = (1 + STRAIGHTNESS * (relative - 0.3) + relative * relative) / 2;
      return strength / (k + Math.sqrt(k * k - relative * relative));
    }
  }
}
