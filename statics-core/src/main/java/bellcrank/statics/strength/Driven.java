package bellcrank.statics.strength;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A device whose driving loads grow.
 *
 * @param device the device
 * @param loadCase factors on the loads as they are stated
 * @param driving the loads that grow
 * @param foundations the ground under contact bases
 */
record Driven(
    Device device, LoadCase loadCase, Variation.Multiple driving, List<Foundation> foundations) {

  Driven {
    foundations = List.copyOf(foundations);
    for (String load : driving.varied(device)) {
      if (device.load(load).isEmpty() || device.load(load).get() instanceof Sought) {
        throw new ModelException(
            device.name(), "driving load", load, "the name of a given load of the device");
      }
    }
  }

  Balance balance(Pose pose, double multiple) {
    Set<String> varied = driving.varied(device);
    return Balance.of(device, Grown.by(loadCase, varied, multiple), pose);
  }

  /** How far the device holds; empty if it has no part that could give way. */
  Optional<Limit> limit(Pose pose) {
    return Limits.concern(device) ? Optional.of(limits(pose).limit(driving)) : Optional.empty();
  }

  /** What decides how far it holds. */
  Limits limits(Pose pose) {
    return Limits.of(device, loadCase, pose, foundations);
  }

  /** The forces by two balances, which tell what is open. */
  PoseForces forces(Pose pose, Needs needs) {
    return PoseForces.of(
        CarriedForces.of(balance(pose, 0), needs),
        CarriedForces.of(balance(pose, 1), needs),
        limit(pose));
  }
}
