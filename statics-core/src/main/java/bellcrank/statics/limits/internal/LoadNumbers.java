package bellcrank.statics.limits.internal;

import bellcrank.statics.equilibrium.internal.ForceSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the greatest number by which loads can be multiplied, and nothing besides: the short way
 * where all conditions are linear and one program says it all. What does not depend on the loads is
 * worked out once. Where conditions are of other kinds, {@link States} has to tell.
 */
public final class LoadNumbers {

  private final ForceSpace space;
  private final List<Bound> bounds;
  private final int free;
  private final boolean serves;

  /** Multiples of the free forces in each condition, side by side. */
  private final double[] ofFree;

  private LoadNumbers(ForceSpace space, PartBounds parts) {
    this.space = space;
    serves = parts.branches().isEmpty() && parts.sinking().isEmpty();
    bounds = serves ? withoutImplied(parts.bounds()) : List.of();
    free = space.freedom();
    ofFree = new double[bounds.size() * free];
    for (int k = 0; k < bounds.size(); k++) {
      Bound bound = bounds.get(k);
      for (int z = 0; z < free; z++) {
        double sum = bound.sum(space.free(z));
        ofFree[k * free + z] = Math.abs(sum) < States.ROUNDING ? 0 : sum;
      }
    }
  }

  private static List<Bound> withoutImplied(List<Bound> bounds) {
    List<Bound> needed = new ArrayList<>(bounds.size());
    for (Bound bound : bounds) {
      if (!bound.implied) {
        needed.add(bound);
      }
    }
    return needed;
  }

  /**
   * What does not depend on loads.
   *
   * @param space all forces that balance loads
   * @param parts what the parts can give
   */
  public static LoadNumbers of(ForceSpace space, PartBounds parts) {
    return new LoadNumbers(space, parts);
  }

  /** Whether all conditions are linear, so that numbers can be found this way. */
  public boolean serve() {
    return serves;
  }

  /**
   * The greatest number, or the least.
   *
   * @param loads the loads, some of which vary
   * @param scale size of the loads in N, above 0
   * @param sign 1 for the greatest, −1 for the least
   * @return infinite if it grows without end; empty if there is none, or the library found none
   */
  public OptionalDouble extreme(Travel loads, double scale, double sign) {
    double[] fixed = space.turned(loads.fixed);
    double[] varied = space.turned(loads.varied);
    Program program = new Program(free + 1, bounds.size() + 2);
    for (int k = 0; k < space.conditions(); k++) {
      double ofNumber = space.leftOf(varied, k) / scale;
      double left = space.leftOf(fixed, k) / scale;
      if (Math.abs(ofNumber) > States.BALANCE) {
        program.equal(numberTimes(ofNumber), -left);
      } else if (Math.abs(left) > States.BALANCE) {
        return OptionalDouble.empty();
      }
    }
    conditions(program, space.responseTo(fixed), space.responseTo(varied), scale);
    if (loads.greatest < Double.POSITIVE_INFINITY) {
      program.atMost(numberTimes(1), loads.greatest);
    }
    if (loads.least > Double.NEGATIVE_INFINITY) {
      program.atMost(numberTimes(-1), -loads.least);
    }
    Optimum best = Simplex.maximize(program, numberTimes(sign));
    if (best.isFound()) {
      return OptionalDouble.of(best.x[free]);
    }
    return best.kind == Optimum.Kind.UNBOUNDED
        ? OptionalDouble.of(sign * Double.POSITIVE_INFINITY)
        : OptionalDouble.empty();
  }

  private void conditions(Program program, double[] fixed, double[] varied, double scale) {
    for (int k = 0; k < bounds.size(); k++) {
      Bound bound = bounds.get(k);
      double[] row = new double[free + 1];
      System.arraycopy(ofFree, k * free, row, 0, free);
      double multiple = bound.sum(varied) / scale;
      row[free] = Math.abs(multiple) < States.ROUNDING ? 0 : multiple;
      program.atMost(row, (bound.limit - bound.sum(fixed)) / scale);
    }
  }

  private double[] numberTimes(double multiple) {
    double[] row = new double[free + 1];
    row[free] = multiple;
    return row;
  }
}
