package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.limits.internal.AtLimit;
import bellcrank.statics.limits.internal.Bound;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Travel;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Finds what each one-sided or rough part does in all states. */
final class PartStates {

  /** Share of the loads below which a force counts as none. */
  private static final double NONE = 1e-9;

  private final Device device;
  private final Admissible admissible;
  private final FrictionLevel friction;

  PartStates(Device device, Admissible admissible, FrictionLevel friction) {
    this.device = device;
    this.admissible = admissible;
    this.friction = friction;
  }

  List<PartState> all() {
    Travel given = admissible.given();
    Goal any = Goal.none(admissible.columns());
    Admissible.Found found = admissible.greatest(given, friction, any);
    List<PartState> states = new ArrayList<>();
    if (!found.extreme().isFound()) {
      return states;
    }
    List<Bound> atLimit = AtLimit.of(found.states(), any, found.extreme());
    for (int i = 0; i < device.connections().size(); i++) {
      Connection connection = device.connections().get(i);
      int first = admissible.assembly().firstColumn(i);
      for (int column : LeastForces.columns(connection, first)) {
        if (column == first) {
          states.add(state(connection, i, column, given, atLimit));
        }
      }
    }
    return List.copyOf(states);
  }

  private PartState state(
      Connection connection, int index, int column, Travel given, List<Bound> atLimit) {
    Goal goal = Goal.force(column, 1, admissible.columns());
    Extreme high = admissible.greatest(given, friction, goal).extreme();
    Extreme low = admissible.greatest(given, friction, goal.negative()).extreme();
    double least = low.isFound() ? Math.max(0, 0 - low.value()) : 0;
    Range range =
        new Range(
            Dimension.FORCE,
            OptionalDouble.of(least),
            high.isFound()
                ? OptionalDouble.of(Math.max(least, high.value()))
                : OptionalDouble.empty(),
            Math.max(high.gap(), low.gap()));
    double none = NONE * admissible.scale();
    PartState.State state;
    if (high.isFound() && high.value() <= none) {
      state = isRope(connection) ? PartState.State.SLACK : PartState.State.OPEN;
    } else if (least <= none) {
      state = PartState.State.MAY_CARRY;
    } else {
      state =
          atLimit.stream().anyMatch(bound -> bound.slidesAt(index))
              ? PartState.State.ABOUT_TO_SLIP
              : PartState.State.CARRIES;
    }
    return new PartState(connection.name(), state, range);
  }

  private static boolean isRope(Connection connection) {
    return switch (connection.kind()) {
      case "line", "reeving", "wrap" -> true;
      default -> false;
    };
  }
}
