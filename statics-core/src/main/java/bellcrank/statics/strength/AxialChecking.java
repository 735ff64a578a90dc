package bellcrank.statics.strength;

import java.util.Optional;

/**
 * A check of a strut, which carries an axial force and nothing else; its own weight does not bend
 * it here.
 *
 * @param <D> what its rule is fed with
 */
abstract class AxialChecking<D> extends Checking<D> {

  private final int tension;
  private final Sized sized;

  AxialChecking(String strut, String what, int tension, Sized sized, Rule<D> rule) {
    super(strut, what, rule);
    this.tension = tension;
    this.sized = sized;
  }

  /** The strut under a tension and at a length. */
  abstract D demand(double pull, double length, Sized strut);

  @Override
  final void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixTension(tension, none, one, multiple);
  }

  @Override
  final Optional<String> open(CarriedForces state) {
    return state.tensionOpen(tension);
  }

  @Override
  final Factor factor(D demand) {
    return rule().factor(sized.material());
  }

  @Override
  final D worst(CarriedForces state) {
    return demand(state.tension(tension), state.length(tension), sized);
  }
}
