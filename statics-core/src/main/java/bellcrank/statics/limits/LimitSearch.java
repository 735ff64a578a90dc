package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Travel;
import java.util.OptionalDouble;

/** Finds how far a variation can go. */
final class LimitSearch {

  private final Device device;
  private final LoadCase loadCase;
  private final Pose pose;
  private final Admissible admissible;
  private final GivingWays givingWays;
  private final FrictionLevel friction;

  LimitSearch(
      Device device,
      LoadCase loadCase,
      Pose pose,
      Admissible admissible,
      GivingWays givingWays,
      FrictionLevel friction) {
    this.device = device;
    this.loadCase = loadCase;
    this.pose = pose;
    this.admissible = admissible;
    this.givingWays = givingWays;
    this.friction = friction;
  }

  Limit limit(Variation variation) {
    Travels travels = new Travels(device, loadCase, pose, admissible.space());
    Travel travel = travels.of(variation);
    if (travel.isOfNothing()) {
      return anyMultiple(variation);
    }
    double length = travels.length(variation);
    Limit.End greatest;
    Limit.End least;
    Goal up = Goal.number(1, admissible.columns());
    Admissible.Found high = admissible.greatest(travel, friction, up);
    if (high.extreme().kind() == Extreme.Kind.NONE) {
      return new Limit.Never(variation);
    }
    Admissible.Found low = admissible.greatest(travel, friction, up.negative());
    if (high.extreme().kind() == Extreme.Kind.OPEN && low.extreme().kind() == Extreme.Kind.OPEN) {
      return new Limit.NotDecided(variation, Admissible.OPEN);
    }
    greatest = end(high, up, travel, length);
    least = end(low, up.negative(), travel, 0);
    return new Limit.Between(variation, least, greatest);
  }

  /** A program in which the multiple stands nowhere says nothing about it. */
  private Limit anyMultiple(Variation variation) {
    Extreme any = admissible.greatest(admissible.given(), friction, anything()).extreme();
    if (any.kind() == Extreme.Kind.OPEN) {
      return new Limit.NotDecided(variation, Admissible.OPEN);
    }
    if (!any.isFound()) {
      return new Limit.Never(variation);
    }
    Extreme smooth =
        admissible.greatest(admissible.given(), friction.times(0), anything()).extreme();
    Limit.End end = smooth.isFound() ? new Limit.End.Unlimited() : new Limit.End.SelfLocking();
    return new Limit.Between(variation, end, end);
  }

  private Goal anything() {
    return Goal.none(admissible.columns());
  }

  /** The greatest value alone. */
  OptionalDouble greatest(Variation variation) {
    Travel travel = new Travels(device, loadCase, pose, admissible.space()).of(variation);
    if (travel.isOfNothing()) {
      return admissible.greatest(admissible.given(), friction, anything()).extreme().isFound()
          ? OptionalDouble.of(Double.POSITIVE_INFINITY)
          : OptionalDouble.empty();
    }
    return admissible.number(travel, friction, 1);
  }

  private Limit.End end(Admissible.Found found, Goal goal, Travel travel, double lineEnd) {
    Extreme extreme = found.extreme();
    if (extreme.kind() == Extreme.Kind.OPEN || extreme.kind() == Extreme.Kind.NONE) {
      return new Limit.End.Open(Admissible.OPEN);
    }
    if (extreme.isFound()) {
      double number = extreme.number();
      boolean atLineEnd =
          travel.isBounded() && Math.abs(number - lineEnd) <= 1e-9 * Math.max(1, travel.length());
      return atLineEnd
          ? new Limit.End.EndOfLine(lineEnd)
          : new Limit.End.At(number + 0.0, extreme.gap(), () -> givingWays.at(found, goal));
    }
    Extreme smooth = admissible.greatest(travel, friction.times(0), goal).extreme();
    return smooth.kind() == Extreme.Kind.UNBOUNDED
        ? new Limit.End.Unlimited()
        : new Limit.End.SelfLocking();
  }
}
