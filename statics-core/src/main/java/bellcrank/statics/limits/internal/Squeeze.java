package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a device can only hold with parts that are squeezed together beforehand. Forces that
 * balance without loads and may be multiplied at will can be locked in. If the state with the least
 * pushes and tensions still loads all parts of such a squeeze, the device needs it.
 */
public final class Squeeze {

  /** Share of the loads below which a force counts as none. */
  private static final double NONE = 1e-7;

  private Squeeze() {}

  /**
   * Parts whose squeeze is needed.
   *
   * @param states the states under load, at least one
   * @param pushes unknowns that cannot be below zero
   * @return those of them that are squeezed; empty if none need be
   */
  public static List<Integer> needed(States states, List<Integer> pushes) {
    States locked = states.lockedIn();
    if (pushes.isEmpty() || squeezed(locked, pushes, List.of()).isEmpty()) {
      return List.of();
    }
    double[] multiples = new double[states.columns()];
    for (int column : pushes) {
      multiples[column] = -1;
    }
    Extreme least = states.greatest(Goal.forces(multiples));
    if (!least.isFound()) {
      return List.of();
    }
    List<Integer> loaded = new ArrayList<>();
    List<Integer> idle = new ArrayList<>();
    for (int column : pushes) {
      (least.forces[column] > NONE * states.scale() ? loaded : idle).add(column);
    }
    return squeezed(locked, loaded, idle);
  }

  /** Parts of the greatest squeeze of a total of one, with others idle. */
  private static List<Integer> squeezed(States locked, List<Integer> pushes, List<Integer> idle) {
    double[] total = new double[locked.columns()];
    int[] columns = new int[pushes.size()];
    double[] ones = new double[pushes.size()];
    for (int k = 0; k < columns.length; k++) {
      columns[k] = pushes.get(k);
      ones[k] = 1;
      total[columns[k]] = 1;
    }
    States limited = locked.with(new Bound(-1, Bound.Kind.PART, 0, 1, columns, ones));
    for (int column : idle) {
      limited = limited.with(new Bound(-1, Bound.Kind.PART, 0, 0, new int[] {column}, 1));
    }
    Extreme most = limited.greatest(Goal.forces(total));
    List<Integer> squeezed = new ArrayList<>();
    if (most.isFound() && most.value() > NONE) {
      for (int column : pushes) {
        if (most.forces[column] > NONE) {
          squeezed.add(column);
        }
      }
    }
    return squeezed;
  }
}
