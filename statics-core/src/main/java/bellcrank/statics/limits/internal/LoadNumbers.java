package bellcrank.statics.limits.internal;

import bellcrank.statics.equilibrium.internal.ForceSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds the greatest number by which loads can be multiplied, and nothing besides: the short way
 * where all conditions are linear and one program says it all. What does not depend on the loads is
 * worked out once. Where conditions are of other kinds, {@link States} has to tell.
 */
public final class LoadNumbers {

  private final ForceSpace space;
  private final List<Bound> bounds;
  private final boolean serves;

  /** Multiples of the free forces in each condition, side by side. */
  private double[] ofFree = {};

  private LoadNumbers(ForceSpace space, PartBounds parts) {
    this.space = space;
    serves = parts.branches().isEmpty() && parts.sinking().isEmpty();
    bounds = serves ? withoutImplied(parts.bounds()) : List.of();
    moved();
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

  /** Takes in that the space of forces has been moved to another pose. */
  public void moved() {
    int free = space.freedom();
    if (ofFree.length != bounds.size() * free) {
      ofFree = new double[bounds.size() * free];
    }
    for (int k = 0; k < bounds.size(); k++) {
      Bound bound = bounds.get(k);
      for (int z = 0; z < free; z++) {
        double sum = bound.sum(space.free(z));
        ofFree[k * free + z] = Math.abs(sum) < States.ROUNDING ? 0 : sum;
      }
    }
  }

  /** Whether all conditions are linear, so that numbers can be found this way. */
  public boolean serve() {
    return serves;
  }

  /**
   * The greatest number, or the least.
   *
   * @param loads the loads, some of which vary; used up
   * @param scale size of the loads in N, above 0
   * @param sign 1 for the greatest, −1 for the least
   * @return infinite if it grows without end; empty if there is none, or the library found none
   */
  public OptionalDouble extreme(Travel loads, double scale, double sign) {
    Sheet sheet = new Sheet(this);
    return sheet.find(loads.fixed, loads.varied, loads.least, loads.greatest, scale, sign)
        ? OptionalDouble.of(sheet.number())
        : OptionalDouble.empty();
  }

  /** Storage for finding one number after the other. For one thread at a time. */
  public static final class Sheet {

    private final LoadNumbers of;
    private final double[] forces;
    private final double[] ofNumber;
    private Program program;
    private double[] goal;
    private FreeCorner corner;

    /** The library's storage, made once it is needed. */
    private Optional<Simplex> simplex = Optional.empty();

    private double number;

    /**
     * An empty sheet.
     *
     * @param of what does not depend on the loads
     */
    public Sheet(LoadNumbers of) {
      this.of = of;
      int columns = of.space.assembly().columns();
      forces = new double[columns];
      ofNumber = new double[columns];
      goal = new double[of.space.freedom() + 1];
      program = new Program(goal.length, of.bounds.size());
      corner = new FreeCorner(goal.length);
    }

    /**
     * What {@link #find} has found.
     *
     * @return infinite if it grows without end
     */
    public double number() {
      return number;
    }

    /**
     * Finds the greatest number, or the least.
     *
     * @param fixed right side of the loads that do not vary; changed
     * @param varied right side of those that do; changed
     * @param least least number that counts
     * @param greatest greatest number that counts
     * @param scale size of the loads in N, above 0
     * @param sign 1 for the greatest, −1 for the least
     * @return false if there is none, or the library found none
     */
    public boolean find(
        double[] fixed, double[] varied, double least, double greatest, double scale, double sign) {
      int free = of.space.freedom();
      if (goal.length != free + 1) {
        goal = new double[free + 1];
        program = new Program(goal.length, of.bounds.size());
        corner = new FreeCorner(goal.length);
      }
      program.clear();
      if (!balance(fixed, varied, scale)) {
        return false;
      }
      conditions(fixed, varied, scale);
      if (greatest < Double.POSITIVE_INFINITY) {
        program.atMost(numberTimes(1), greatest);
      }
      if (least > Double.NEGATIVE_INFINITY) {
        program.atMost(numberTimes(-1), -least);
      }
      goal[free] = sign;
      if (corner.find(program, goal)) {
        number = corner.point()[free];
        return true;
      }
      Optimum best = library().greatest(program, goal);
      number = best.isFound() ? best.x[free] : sign * Double.POSITIVE_INFINITY;
      return best.isFound() || best.kind == Optimum.Kind.UNBOUNDED;
    }

    private Simplex library() {
      Simplex made = simplex.orElseGet(Simplex::new);
      simplex = Optional.of(made);
      return made;
    }

    /** What must be kept whatever the forces are. */
    private boolean balance(double[] fixed, double[] varied, double scale) {
      ForceSpace space = of.space;
      space.turn(fixed);
      space.turn(varied);
      for (int k = 0; k < space.conditions(); k++) {
        double multiple = space.leftOf(varied, k) / scale;
        double left = space.leftOf(fixed, k) / scale;
        if (Math.abs(multiple) > States.BALANCE) {
          program.equal(numberTimes(multiple), -left);
        } else if (Math.abs(left) > States.BALANCE) {
          return false;
        }
      }
      return true;
    }

    private void conditions(double[] fixed, double[] varied, double scale) {
      of.space.respond(fixed, forces);
      of.space.respond(varied, ofNumber);
      int free = goal.length - 1;
      for (int k = 0; k < of.bounds.size(); k++) {
        Bound bound = of.bounds.get(k);
        double[] row = program.blank();
        System.arraycopy(of.ofFree, k * free, row, 0, free);
        double multiple = bound.sum(ofNumber) / scale;
        row[free] = Math.abs(multiple) < States.ROUNDING ? 0 : multiple;
        program.atMost(row, (bound.limit - bound.sum(forces)) / scale);
      }
    }

    private double[] numberTimes(double multiple) {
      double[] row = new double[goal.length];
      row[goal.length - 1] = multiple;
      return row;
    }
  }
}
