package bellcrank.statics.strength;

import java.util.Optional;

/** A check of the plates by which a body sits on a pin. */
final class PlateChecking extends Checking<PlateDemand> {

  private final PinJoint joint;
  private final PinJoint.Plate plate;
  private final int force;

  PlateChecking(PinJoint joint, PinJoint.Plate plate, int force, Rule<PlateDemand> rule) {
    super(joint.part(), what(rule.check(), plate), rule);
    this.joint = joint;
    this.plate = plate;
    this.force = force;
  }

  static String what(Check<PlateDemand> check, PinJoint.Plate plate) {
    return check.name() + " of " + plate.body();
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixForce(force, none, one, multiple);
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return state.forceOpen(force);
  }

  @Override
  PlateDemand worst(CarriedForces state) {
    return new PlateDemand(state.size(force), joint, plate);
  }
}
