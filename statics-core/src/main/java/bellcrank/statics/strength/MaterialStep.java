package bellcrank.statics.strength;

import bellcrank.statics.ground.Span;
import java.util.Map;
import java.util.Optional;

/**
 * The strengths of a material up to a thickness.
 *
 * @param upTo greatest thickness for which they hold in m, included; empty if there is no bound
 * @param strengths the strengths in Pa, as ranges where the source has a range
 */
public record MaterialStep(Optional<Double> upTo, Map<Material.Strength, Span> strengths) {

  /**
   * Copies the strengths.
   *
   * @param upTo greatest thickness for which they hold in m, if there is a bound
   * @param strengths the strengths in Pa
   */
  public MaterialStep {
    strengths = Map.copyOf(strengths);
  }

  /**
   * One of its strengths.
   *
   * @param strength which
   * @return in Pa; empty if it is not known
   */
  public Optional<Span> strength(Material.Strength strength) {
    return Optional.ofNullable(strengths.get(strength));
  }

  /**
   * Whether the strengths hold for a thickness.
   *
   * @param thickness in m
   * @return whether it is within the bound
   */
  public boolean holdsFor(double thickness) {
    return upTo.isEmpty() || thickness <= upTo.get();
  }
}
