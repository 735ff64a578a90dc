package bellcrank.statics.strength;

import java.util.Optional;

/** Axial stress of a strut; its own weight does not bend it here. */
final class StrutStressChecking extends Checking<BarDemand> {

  static final String WHAT = "axial stress";

  private final int tension;
  private final Sized sized;

  StrutStressChecking(String strut, int tension, Sized sized, Rule<BarDemand> rule) {
    super(strut, WHAT, rule);
    this.tension = tension;
    this.sized = sized;
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixTension(tension, none, one, multiple);
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return state.tensionOpen(tension);
  }

  @Override
  Factor factor(BarDemand demand) {
    return rule().factor(sized.material());
  }

  @Override
  BarDemand worst(CarriedForces state) {
    return new BarDemand(state.tension(tension), 0, 0, sized);
  }
}
