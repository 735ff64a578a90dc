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
import bellcrank.statics.limits.internal.LoadNumbers;
import bellcrank.statics.limits.internal.PartBounds;
import bellcrank.statics.limits.internal.States;
import bellcrank.statics.limits.internal.Travel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
  private final Pose pose;
  private final ForceSpace space;
  private final GroundCaps ground;
  private final double scale;
  private volatile Optional<Kept> kept;

  /** The same forces for states, made once one is asked for. */
  private volatile Optional<ForceSpace> forStates = Optional.empty();

  /** What the parts can give where friction is of one level, used again as long as it is. */
  private record Kept(FrictionLevel friction, PartBounds parts, LoadNumbers numbers) {}

  /** What was found, and among which states. */
  record Found(States states, Extreme extreme) {}

  Admissible(Device device, LoadCase loadCase, Pose pose, List<Foundation> foundations) {
    this(
        device,
        loadCase,
        pose,
        ForceSpace.soonest(device, pose),
        new GroundCaps(device, foundations),
        Optional.empty());
  }

  private Admissible(
      Device device,
      LoadCase loadCase,
      Pose pose,
      ForceSpace space,
      GroundCaps ground,
      Optional<Kept> kept) {
    this.device = device;
    this.loadCase = loadCase;
    this.pose = pose;
    this.space = space;
    this.ground = ground;
    this.kept = kept;
    double size = space.scale(loadCase);
    scale = size > 0 ? size : 1;
  }

  /** The same in another pose; what the parts can give does not depend on it. */
  Admissible at(Pose other, FrictionLevel friction) {
    ForceSpace there = space.at(other);
    PartBounds parts = kept(friction).parts();
    Kept same = new Kept(friction, parts, LoadNumbers.of(there, parts));
    return new Admissible(device, loadCase, other, there, ground, Optional.of(same));
  }

  /** All forces that can balance loads; which of them are free is as it comes. */
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

  private ForceSpace forStates() {
    Optional<ForceSpace> made = forStates;
    if (made.isPresent()) {
      return made.get();
    }
    ForceSpace chosen = space.withCare(pose);
    forStates = Optional.of(chosen);
    return chosen;
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

  /**
   * The greatest number of varied loads, or the least.
   *
   * @param sign 1 for the greatest, −1 for the least
   * @return infinite if it grows without end; empty if there is none, or none was found
   */
  OptionalDouble number(Travel loads, FrictionLevel friction, double sign) {
    if (ground.areFixed() && kept(friction).numbers().serve()) {
      return kept(friction).numbers().extreme(loads, scale, sign);
    }
    Extreme extreme = greatest(loads, friction, Goal.number(sign, columns())).extreme();
    if (extreme.isFound()) {
      return OptionalDouble.of(extreme.number());
    }
    return extreme.kind() == Extreme.Kind.UNBOUNDED
        ? OptionalDouble.of(sign * Double.POSITIVE_INFINITY)
        : OptionalDouble.empty();
  }

  /** What the parts can give where all conditions are linear and stay; empty elsewhere. */
  Optional<PartBounds> linear(FrictionLevel friction) {
    return ground.areFixed() && kept(friction).numbers().serve()
        ? Optional.of(kept(friction).parts())
        : Optional.empty();
  }

  private Kept kept(FrictionLevel friction) {
    Optional<Kept> last = kept;
    if (last.isPresent() && last.get().friction().equals(friction)) {
      return last.get();
    }
    PartBounds parts = parts(friction, ground.first(assembly()));
    Kept made = new Kept(friction, parts, LoadNumbers.of(space, parts));
    kept = Optional.of(made);
    return made;
  }

  private PartBounds parts(FrictionLevel friction, Map<String, GroundCap> caps) {
    return PartBounds.of(device, assembly(), loadCase, friction, caps);
  }

  /** The same under the given loads, every condition being widened by a share of them. */
  Found widened(FrictionLevel friction, Goal goal, double share) {
    States states =
        States.of(forStates(), parts(friction, ground.first(assembly())), given(), scale);
    return new Found(states, states.greatest(goal, share));
  }

  /**
   * Whether all conditions are such that forces which keep them do so times any number, so that
   * loads and forces may grow together.
   */
  boolean isProportional(FrictionLevel friction) {
    return ground.areFixed() && kept(friction).parts().areProportional();
  }

  /**
   * Makes a goal greatest over any multiple of the given loads, the pushes and tensions adding up
   * to the size of the loads.
   */
  Found squeezed(FrictionLevel friction, List<Integer> pushes, Goal goal) {
    double[] loads = given().fixed();
    Travel all =
        Travel.of(
            new double[loads.length], loads, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    PartBounds parts = parts(friction, ground.first(assembly()));
    States states = States.of(space, parts, all, scale).withTotal(pushes);
    return new Found(states, states.greatest(goal));
  }

  private Found greatest(
      Travel loads, FrictionLevel friction, Goal goal, Map<String, GroundCap> caps) {
    States states = States.of(forStates(), parts(friction, caps), loads, scale);
    return new Found(states, states.greatest(goal));
  }
}
