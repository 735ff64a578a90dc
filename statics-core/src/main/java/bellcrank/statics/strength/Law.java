package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * The formula of a rule: what is demanded of a part, and what it can give.
 *
 * @param <D> what the formula is fed with
 */
public interface Law<D> {

  /**
   * What is not known and would be needed.
   *
   * @param demand forces and the part that carries them
   * @return a clause such as {@code the yield strength of oak is not stated}; empty if all is known
   */
  Optional<String> lacks(D demand);

  /**
   * What is demanded, as a stress, a force or another quantity.
   *
   * @param demand forces and the part that carries them
   * @return 0 or more; it grows with the forces
   */
  double demanded(D demand);

  /**
   * What the part can give under the same forces.
   *
   * @param demand forces and the part that carries them
   * @param factor what strengths are divided by
   * @return above 0, of the same dimension
   */
  double resistance(D demand, double factor);

  /**
   * Share of the resistance that is demanded. Courses ask for nothing else in most of their poses,
   * so a law may say it at once instead of by its parts.
   *
   * @param demand forces and the part that carries them
   * @param factor what strengths are divided by
   * @return 0 or more; without bound where something is not known
   */
  default double used(D demand, double factor) {
    return lacks(demand).isPresent()
        ? Double.POSITIVE_INFINITY
        : demanded(demand) / resistance(demand, factor);
  }

  /**
   * Whether the demand grows in proportion when all forces do, and the resistance stays. Then the
   * multiple at which it is reached needs no search.
   *
   * @return false unless a law says so
   */
  default boolean isProportional() {
    return false;
  }

  /**
   * Whether the share of the resistance that is demanded never falls as all forces grow in
   * proportion. Where nothing else loads a device, the limit is then passed at one multiple only.
   *
   * @return false unless the demand is proportional or a law says so
   */
  default boolean isGrowing() {
    return isProportional();
  }

  /**
   * The kind of quantity that is compared.
   *
   * @return the dimension of demand and resistance
   */
  Dimension dimension();

  /**
   * The formula with the numbers in it.
   *
   * @param demand forces and the part that carries them
   * @param factor what strengths are divided by
   * @param units units to write in
   * @return one line such as {@code N/A + M/S = 12.30 + 45.60 = 57.90 MPa}
   */
  String working(D demand, double factor, UnitSystem units);
}
