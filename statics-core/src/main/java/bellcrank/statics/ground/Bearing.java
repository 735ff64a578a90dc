package bellcrank.statics.ground;

import java.util.OptionalDouble;

/**
 * How much normal force the ground bears under a flat base, after one of several rules. A
 * resistance carries no partial factor; with characteristic soil values it is characteristic.
 */
public sealed interface Bearing permits Presumptive, Drained, Undrained {

  /**
   * The normal force that the ground bears under the effective area of this load, and at its
   * inclination where the rule knows one.
   *
   * @param load what the base sends into the ground
   * @return in N, 0 or more; 0 where there is no effective width and where the tangential force is
   *     more than the rule allows
   */
  double resistance(BaseLoad load);

  /**
   * Where the rule or its figure comes from.
   *
   * @return document, edition and place
   */
  String source();

  /**
   * Normal force over resistance.
   *
   * @param load what the base sends into the ground
   * @return 0 or more, above 1 if the ground gives; 0 for neither a normal force nor a couple;
   *     empty if there is no resistance
   */
  default OptionalDouble utilisation(BaseLoad load) {
    if (load.normal() == 0 && load.couple() == 0) {
      return OptionalDouble.of(0);
    }
    double share = load.normal() / resistance(load);
    return Double.isFinite(share) ? OptionalDouble.of(share) : OptionalDouble.empty();
  }
}
