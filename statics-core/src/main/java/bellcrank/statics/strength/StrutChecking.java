package bellcrank.statics.strength;

import java.util.Optional;

/** Buckling of a strut; its length is that of the pose. */
final class StrutChecking extends Checking<ColumnDemand> {

  private final ColumnEnds ends;
  private final int tension;
  private final Sized sized;

  StrutChecking(ColumnEnds ends, int tension, Sized sized, Rule<ColumnDemand> rule) {
    super(ends.part(), rule.check().name(), rule);
    this.ends = ends;
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
  Factor factor(ColumnDemand demand) {
    return rule().factor(sized.material());
  }

  @Override
  ColumnDemand worst(CarriedForces state) {
    return new ColumnDemand(
        Math.max(0, -state.tension(tension)), 0, state.length(tension), ends, sized);
  }
}
