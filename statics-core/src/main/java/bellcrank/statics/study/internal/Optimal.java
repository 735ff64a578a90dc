package bellcrank.statics.study.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.PartBounds;
import bellcrank.statics.limits.internal.States;
import bellcrank.statics.limits.internal.Travel;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A state at a limit, as the search of the limits finds it.
 *
 * @param forces the unknowns, couples per size of the device, in N
 * @param number the varied number there
 */
record Optimal(List<Double> forces, double number) {

  /** How much above the least factor on friction states are looked at, so that there are some. */
  private static final double ABOVE = 1e-11;

  /**
   * The state in which a sum of forces, or the varied number, is greatest.
   *
   * @param multiples of the unknowns in what is made greatest
   * @param sign of the number in what is made greatest: 1, −1 or 0
   * @param stated the value of a factor on friction; of no matter otherwise
   */
  static Optional<Optimal> of(
      Device device,
      LoadCase loadCase,
      Varied varied,
      double[] multiples,
      double sign,
      double stated) {
    ForceSpace space = ForceSpace.of(device, Pose.DRAWN);
    boolean friction = varied instanceof Varied.Friction;
    FrictionLevel level =
        friction ? FrictionLevel.STATED.times(stated * (1 + ABOVE)) : FrictionLevel.STATED;
    PartBounds parts = PartBounds.of(device, space.assembly(), loadCase, level, Map.of());
    double size = space.scale(loadCase);
    States states =
        States.of(space, parts, travel(device, loadCase, space, varied), size > 0 ? size : 1);
    int columns = space.assembly().columns();
    Goal goal;
    if (friction) {
      goal = Goal.none(columns);
    } else {
      goal = sign == 0 ? Goal.forces(multiples) : Goal.number(sign, columns);
    }
    Extreme found = states.greatest(goal);
    return found.isFound() && columns == multiples.length
        ? Optional.of(
            new Optimal(
                Arrays.stream(found.forces()).boxed().toList(), friction ? stated : found.number()))
        : Optional.empty();
  }

  private static Travel travel(Device device, LoadCase loadCase, ForceSpace space, Varied varied) {
    if (varied instanceof Varied.Loads some) {
      return Travel.of(
          space.loads(loadCase, name -> !some.loads().contains(name)),
          space.loads(loadCase, some.loads()::contains),
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY);
    }
    double[] all = space.loads(loadCase, name -> true);
    if (!(varied instanceof Varied.Place place)) {
      return Travel.fixed(all);
    }
    Point from = device.point(place.from());
    Point to = device.point(place.to());
    Point stated = place(device, place.load());
    double[] shift = space.shift(loadCase, place.load(), stated.to(from));
    for (int i = 0; i < all.length; i++) {
      all[i] += shift[i];
    }
    Vector along = Direction.from(from, to).times(1);
    return Travel.of(all, space.shift(loadCase, place.load(), along), 0, from.distance(to));
  }

  private static Point place(Device device, String load) {
    DualDevice at = new DualDevice(device, device.cases().get(0), Rates.NONE);
    for (DualAction action : DualLoads.of(at)) {
      if (action.owner().equals(load)) {
        return Point.of(action.at().x().value(), action.at().y().value());
      }
    }
    return Point.ORIGIN;
  }
}
