package bellcrank.statics.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A check of the pin itself: the body that pulls most counts. */
final class PinChecking extends Checking<PinDemand> {

  private final PinJoint joint;
  private final int[] forces;

  PinChecking(PinJoint joint, List<Integer> forces, Rule<PinDemand> rule) {
    super(joint.part(), rule.check().name(), rule);
    this.joint = joint;
    this.forces = forces.stream().mapToInt(Integer::intValue).toArray();
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    for (int force : forces) {
      to.mixForce(force, none, one, multiple);
    }
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return Arrays.stream(forces)
        .boxed()
        .flatMap(force -> state.forceOpen(force).stream())
        .findFirst();
  }

  @Override
  PinDemand worst(CarriedForces state) {
    double greatest = 0;
    for (int force : forces) {
      greatest = Math.max(greatest, state.size(force));
    }
    return new PinDemand(greatest, joint);
  }
}
