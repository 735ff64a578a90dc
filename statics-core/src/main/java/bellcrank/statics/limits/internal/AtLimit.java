package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which conditions are at their limit in every state in which a goal is greatest. A condition that
 * only happens to be at its limit in the state that a program found, and has room in another one,
 * says nothing about how the device gives way.
 */
public final class AtLimit {

  /** Share of the loads below which room counts as none. */
  private static final double ROOM = 1e-6;

  /** Share of the loads by which conditions are widened, so that rounding leaves states over. */
  private static final double WIDENING = 1e-9;

  private AtLimit() {}

  /**
   * The conditions.
   *
   * @param states the states
   * @param goal what is greatest
   * @param extreme where it is
   * @return those at their limit in every such state
   */
  public static List<Bound> of(States states, Goal goal, Extreme extreme) {
    return widened(states, goal, extreme, 0);
  }

  /**
   * The conditions at which a device is about to lock itself. Of parts that a squeeze loads they
   * are those at their limit in every such squeeze; of all others, those in every state under the
   * loads.
   */
  public static List<Bound> squeezed(
      States squeeze, Goal goal, Extreme most, States loaded, Extreme state) {
    List<Bound> always = new ArrayList<>();
    for (Bound bound : of(squeeze, goal, most)) {
      if (carries(bound, most, squeeze)) {
        always.add(bound);
      }
    }
    for (Bound bound : of(loaded, Goal.none(loaded.columns()), state)) {
      if (!carries(bound, most, squeeze)) {
        always.add(bound);
      }
    }
    return always;
  }

  private static boolean carries(Bound bound, Extreme extreme, States states) {
    for (int column : bound.columns) {
      if (Math.abs(extreme.forces[column]) > ROOM * states.scale()) {
        return true;
      }
    }
    return false;
  }

  /** The same where every condition is widened by a share of the loads. */
  public static List<Bound> widened(States states, Goal goal, Extreme extreme, double share) {
    States there = goal.number != 0 ? states.at(extreme.number()) : held(states, goal, extreme);
    double slack = (ROOM - share) * states.scale();
    double wide = share + WIDENING * Math.max(1, share);
    List<Bound> open = new ArrayList<>();
    for (Bound bound : states.parts().bounds()) {
      if (room(bound, extreme.forces) <= slack) {
        open.add(bound);
      }
    }
    List<Bound> always = new ArrayList<>();
    boolean more = true;
    while (open.size() > 1 && more) {
      // what has room in some state is found for many at once: where the sum of all room is
      // greatest
      Extreme roomiest = there.greatest(Goal.forces(away(states, open)), wide);
      more = roomiest.isFound() && open.removeIf(bound -> room(bound, roomiest.forces) > slack);
    }
    while (!open.isEmpty()) {
      Bound bound = open.remove(open.size() - 1);
      Extreme roomiest = there.greatest(Goal.forces(away(states, List.of(bound))), wide);
      if (roomiest.kind() == Extreme.Kind.UNBOUNDED) {
        continue;
      }
      if (!roomiest.isFound() || room(bound, roomiest.forces) <= slack) {
        always.add(bound);
      } else {
        open.removeIf(other -> room(other, roomiest.forces) > slack);
      }
    }
    for (Branch branch : states.parts().branches()) {
      for (Bound bound : branch.atLimit(extreme.forces, slack)) {
        Extreme roomiest = there.greatest(Goal.forces(away(states, List.of(bound))), wide);
        boolean room = roomiest.isFound() && branch.room(bound, roomiest.forces) > slack;
        if (!room && roomiest.kind() != Extreme.Kind.UNBOUNDED) {
          always.add(bound);
        }
      }
    }
    for (SinkingBase base : states.parts().sinking()) {
      always.addAll(base.atLimit(extreme.forces, slack));
    }
    return always;
  }

  /** What to make greatest in order to leave conditions the most room in all. */
  private static double[] away(States states, List<Bound> bounds) {
    double[] multiples = new double[states.columns()];
    for (Bound bound : bounds) {
      for (int k = 0; k < bound.columns.length; k++) {
        multiples[bound.columns[k]] -= bound.multiples[k];
      }
    }
    return multiples;
  }

  private static States held(States states, Goal goal, Extreme extreme) {
    int[] columns = new int[states.columns()];
    double[] multiples = new double[columns.length];
    for (int j = 0; j < columns.length; j++) {
      columns[j] = j;
      multiples[j] = -goal.forces[j];
    }
    if (Arrays.stream(multiples).allMatch(m -> m == 0)) {
      return states;
    }
    return states.with(new Bound(-1, Bound.Kind.PART, 0, -extreme.value(), columns, multiples));
  }

  private static double room(Bound bound, double[] forces) {
    return bound.limit - bound.sum(forces);
  }
}
