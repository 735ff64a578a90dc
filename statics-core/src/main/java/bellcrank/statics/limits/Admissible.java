package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.GroundCap;
import bellcrank.statics.limits.internal.PartBounds;
import bellcrank.statics.limits.internal.States;
import bellcrank.statics.limits.internal.Travel;
import java.util.List;
import java.util.Map;

/** The states that a device can be in, asked with the ground's resistance at the very state. */
final class Admissible {

  /** Why nothing is told. */
  static final String OPEN =
      "the search ended without a decision: there are many dry pins, or what the ground gives did"
          + " not settle";

  /** Most times that the ground is asked again. */
  private static final int MOST_ROUNDS = 100;

  private final Device device;
  private final LoadCase loadCase;
  private final ForceSpace space;
  private final GroundCaps ground;
  private final double scale;

  /** What was found, and among which states. */
  record Found(States states, Extreme extreme) {}

  Admissible(Device device, LoadCase loadCase, Pose pose, List<Foundation> foundations) {
    this.device = device;
    this.loadCase = loadCase;
    space = ForceSpace.of(device, pose);
    ground = new GroundCaps(device, foundations);
    double size = space.scale(loadCase);
    scale = size > 0 ? size : 1;
  }

  ForceSpace space() {
    return space;
  }

  Assembly assembly() {
    return space.assembly();
  }

  int columns() {
    return space.assembly().columns();
  }

  double scale() {
    return scale;
  }

  /** The given loads of the case. */
  Travel given() {
    return Travel.fixed(space.loads(loadCase, name -> true));
  }

  /** Makes a goal greatest. */
  Found greatest(Travel loads, FrictionLevel friction, Goal goal) {
    Map<String, GroundCap> caps = ground.first(assembly());
    Found found = greatest(loads, friction, goal, caps);
    if (ground.areFixed()) {
      return found;
    }
    for (int round = 0; round < MOST_ROUNDS && found.extreme().isFound(); round++) {
      Map<String, GroundCap> there = ground.at(assembly(), found.extreme().forces());
      if (GroundCaps.same(caps, there)) {
        return found;
      }
      caps = GroundCaps.between(caps, there);
      found = greatest(loads, friction, goal, caps);
    }
    return found.extreme().isFound() ? new Found(found.states(), Extreme.open()) : found;
  }

  /** The same under the given loads, every condition being widened by a share of them. */
  Found widened(FrictionLevel friction, Goal goal, double share) {
    PartBounds parts =
        PartBounds.of(device, assembly(), loadCase, friction, ground.first(assembly()));
    States states = States.of(space, parts, given(), scale);
    return new Found(states, states.greatest(goal, share));
  }

  private Found greatest(
      Travel loads, FrictionLevel friction, Goal goal, Map<String, GroundCap> caps) {
    PartBounds parts = PartBounds.of(device, assembly(), loadCase, friction, caps);
    States states = States.of(space, parts, loads, scale);
    return new Found(states, states.greatest(goal));
  }
}
