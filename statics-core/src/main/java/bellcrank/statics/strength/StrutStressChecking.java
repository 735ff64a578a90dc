package bellcrank.statics.strength;

import java.util.Optional;

/** Axial stress of a strut; its own weight does not bend it here. */
final class StrutStressChecking extends Checking<BarDemand> {

  private final int tension;
  private final Sized sized;

  StrutStressChecking(String strut, int tension, Sized sized, Rule<BarDemand> rule) {
    super(strut, "axial stress", rule);
    this.tension = tension;
    this.sized = sized;
  }

  @Override
  Optional<String> open(Carried state) {
    return state.tensionOpen(tension);
  }

  @Override
  BarDemand worst(Carried state) {
    return new BarDemand(state.tension(tension), 0, 0, sized);
  }
}
