package bellcrank.statics.study.internal;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * How a limit changes with an input. At a limit the forces f and the varied number s make a goal
 * greatest subject to equilibrium E = 0 and conditions g ≤ 0. Multipliers y and z ≥ 0 with c = Eᵀy
 * + gᵀz there say what each equation and condition is worth, and the rate of the limit is that of
 * c·f − y·E − z·g with forces and multipliers held. Where several multipliers will do, another
 * condition decides on the other side: the rate to either side is the least or greatest over them
 * (E. G. Gol'shtein, Theory of Convex Programming, 1972).
 */
public final class LimitRates {

  /** Share of the loads below which a condition has no room. */
  private static final double ROOM = 1e-7;

  /** Share by which conditions and multipliers may be missed by rounding. */
  private static final double ROUNDING = 1e-7;

  /** Share by which what is linear may differ for a force and its opposite. */
  private static final double ODD = 1e-9;

  private static final int POLISHING = 3;

  private final DualDevice stated;
  private final Varied varied;
  private final Optional<Ask> ask;
  private final double sign;
  private final double[] goal;
  private final double constant;
  private final DualEquations equations;
  private final List<Integer> active = new ArrayList<>();
  private final double[] forces;
  private final boolean varies;
  private double number;
  private Optional<Multipliers> multipliers = Optional.empty();

  /**
   * The rate of a limit.
   *
   * @param below where the input is smaller
   * @param above where it is greater
   */
  public record Sides(double below, double above) {}

  private LimitRates(
      DualDevice stated,
      Varied varied,
      Optional<Ask> ask,
      double sign,
      double[] goal,
      double constant,
      Optimal optimal) {
    this.stated = stated;
    this.varied = varied;
    this.ask = ask;
    this.sign = sign;
    this.goal = goal;
    this.constant = constant;
    varies = !(varied instanceof Varied.Nothing);
    equations = new DualEquations(stated, true);
    forces = optimal.forces().stream().mapToDouble(Double::doubleValue).toArray();
    number = optimal.number();
  }

  /**
   * The greatest or least multiple of loads.
   *
   * @param loads names of the loads
   */
  public static Optional<LimitRates> multiple(
      Device device, LoadCase loadCase, Set<String> loads, boolean greatest) {
    return number(device, loadCase, new Varied.Loads(loads), greatest ? 1 : -1, 0);
  }

  /** The greatest or least distance of a load along a line. */
  public static Optional<LimitRates> place(
      Device device, LoadCase loadCase, String load, String from, String to, boolean greatest) {
    return number(device, loadCase, new Varied.Place(load, from, to), greatest ? 1 : -1, 0);
  }

  /**
   * The least factor on friction.
   *
   * @param factor what it is
   */
  public static Optional<LimitRates> friction(Device device, LoadCase loadCase, double factor) {
    return number(device, loadCase, new Varied.Friction(), -1, factor);
  }

  private static Optional<LimitRates> number(
      Device device, LoadCase loadCase, Varied varied, double sign, double factor) {
    DualDevice stated = new DualDevice(device, loadCase, Rates.NONE);
    double[] none = new double[new DualEquations(stated, true).laws.columns()];
    return Optimal.of(device, loadCase, varied, none, sign, factor)
        .map(optimal -> new LimitRates(stated, varied, Optional.empty(), sign, none, 0, optimal))
        .filter(LimitRates::prepare);
  }

  /** The greatest or least answer to an ask that is linear in the forces. */
  public static Optional<LimitRates> force(
      Device device, LoadCase loadCase, Ask ask, boolean greatest) {
    DualDevice stated = new DualDevice(device, loadCase, Rates.NONE);
    DualEquations equations = new DualEquations(stated, true);
    double sign = greatest ? 1 : -1;
    int columns = equations.laws.columns();
    List<Dual> none = Collections.nCopies(columns, Dual.ZERO);
    Optional<Dual> constant = new DualReader(stated, equations, none).read(ask);
    if (constant.isEmpty()) {
      return Optional.empty();
    }
    double[] goal = new double[columns];
    for (int column = 0; column < columns; column++) {
      List<Dual> one = new ArrayList<>(none);
      one.set(column, Dual.ONE);
      double value = new DualReader(stated, equations, one).read(ask).orElseThrow().value();
      one.set(column, Dual.of(-1));
      double back = new DualReader(stated, equations, one).read(ask).orElseThrow().value();
      double still = constant.get().value();
      // sizes, quotients and directions are not linear in the forces
      boolean linear =
          Math.abs(value + back - 2 * still) <= ODD * Math.max(Math.abs(value), Math.abs(still));
      if (!linear) {
        return Optional.empty();
      }
      goal[column] = sign * (value - still);
    }
    return Optimal.of(device, loadCase, new Varied.Nothing(), goal, 0, 0)
        .map(
            optimal ->
                new LimitRates(
                    stated,
                    new Varied.Nothing(),
                    Optional.of(ask),
                    sign,
                    goal,
                    sign * constant.get().value(),
                    optimal))
        .filter(LimitRates::prepare);
  }

  /** The limit itself, to be compared with what was found elsewhere. */
  public double value() {
    double sum = constant;
    for (int column = 0; column < goal.length; column++) {
      sum += goal[column] * forces[column];
    }
    return varies ? number : sign * sum;
  }

  private double factor() {
    return varied instanceof Varied.Friction ? number : 1;
  }

  private List<Dual> unknowns(DualEquations of) {
    List<Dual> all = new ArrayList<>();
    for (int column = 0; column < forces.length; column++) {
      all.add(Dual.of(forces[column] * of.unit(column)));
    }
    return all;
  }

  /** Finds active conditions and multipliers; whether that went well. */
  private boolean prepare() {
    List<Condition> conditions = DualConditions.of(stated, equations.laws);
    double scale = 1e-300;
    for (double force : forces) {
      scale = Math.max(scale, Math.abs(force));
    }
    for (DualAction action : equations.given) {
      scale = Math.max(scale, action.force().norm().value());
    }
    List<Dual> values = unknowns(equations);
    for (int k = 0; k < conditions.size(); k++) {
      Condition one = conditions.get(k);
      if (one.at(values, factor()).value() / one.size() >= -ROOM * scale) {
        active.add(k);
      }
    }
    Optional<Multipliers> found = Multipliers.of(jacobian(conditions), goals(), equations.rows());
    for (int round = 0; round < POLISHING && found.isPresent(); round++) {
      polish(conditions, found.get().binding());
      found = Multipliers.of(jacobian(conditions), goals(), equations.rows());
    }
    multipliers = found;
    return found.isPresent();
  }

  private double[] goals() {
    double[] all = Arrays.copyOf(goal, goal.length + (varies ? 1 : 0));
    if (varies) {
      all[goal.length] = sign;
    }
    return all;
  }

  /** Slopes of equations and active conditions with forces and number; rows of forces first. */
  private DMatrixRMaj jacobian(List<Condition> conditions) {
    int columns = goal.length + (varies ? 1 : 0);
    int rows = equations.rows();
    DMatrixRMaj all = new DMatrixRMaj(rows + active.size(), columns);
    CommonOps_DDRM.insert(equations.matrix(), all, 0, 0);
    if (varies) {
      List<DualAction> moving = varied.loads(stated, equations.given, new Dual(number, 1));
      DMatrixRMaj slope = equations.loads(moving, true);
      CommonOps_DDRM.insert(slope, all, 0, goal.length);
    }
    List<Dual> values = unknowns(equations);
    for (int k = 0; k < active.size(); k++) {
      Condition one = conditions.get(active.get(k));
      for (int which = 0; which < one.columns().size(); which++) {
        int column = one.columns().get(which);
        double slope = one.slope(values, factor(), which) * equations.unit(column);
        all.add(rows + k, column, slope / one.size());
      }
      if (varied instanceof Varied.Friction) {
        all.set(rows + k, goal.length, one.slopeOfFriction(values, factor()) / one.size());
      }
    }
    return all;
  }

  private DMatrixRMaj misses(List<Condition> conditions) {
    DMatrixRMaj all = new DMatrixRMaj(equations.rows() + active.size(), 1);
    DMatrixRMaj sum = new DMatrixRMaj(equations.rows(), 1);
    DMatrixRMaj f = DMatrixRMaj.wrap(forces.length, 1, forces);
    CommonOps_DDRM.mult(equations.matrix(), f, sum);
    List<DualAction> loads = varied.loads(stated, equations.given, Dual.of(number));
    CommonOps_DDRM.addEquals(sum, equations.loads(loads, false));
    CommonOps_DDRM.insert(sum, all, 0, 0);
    List<Dual> values = unknowns(equations);
    for (int k = 0; k < active.size(); k++) {
      Condition one = conditions.get(active.get(k));
      all.set(equations.rows() + k, 0, one.at(values, factor()).value() / one.size());
    }
    return all;
  }

  /** Moves to where equations and binding conditions hold to the last digits. */
  private void polish(List<Condition> conditions, List<Boolean> binding) {
    DMatrixRMaj slopes = jacobian(conditions);
    DMatrixRMaj right = misses(conditions);
    for (int k = 0; k < active.size(); k++) {
      if (!binding.get(k)) {
        int row = equations.rows() + k;
        right.set(row, 0, 0);
        for (int column = 0; column < slopes.numCols; column++) {
          slopes.set(row, column, 0);
        }
      }
    }
    DMatrixRMaj step = Factored.leastSquares(slopes).solve(right);
    for (int column = 0; column < forces.length; column++) {
      forces[column] -= step.get(column, 0);
    }
    if (varies) {
      number -= step.get(forces.length, 0);
    }
  }

  /**
   * The rate of the limit with an input.
   *
   * @param rates how fast the numbers of the device change with the input
   * @return empty if it is not told here: where forces that are free at the limit matter as well
   */
  public Optional<Sides> at(Rates rates) {
    DualDevice moving = stated.with(rates);
    DualEquations there = new DualEquations(moving, true);
    List<Condition> conditions = DualConditions.of(moving, there.laws);
    Multipliers known = multipliers.orElseThrow();
    DMatrixRMaj lost = losses(moving, there, conditions, forces);
    double own = ownRate(moving, there, forces);
    // forces that the limit leaves free must not matter
    for (double[] free : known.free()) {
      double[] other = forces.clone();
      for (int column = 0; column < other.length; column++) {
        other[column] += free[column];
      }
      DMatrixRMaj change = losses(moving, there, conditions, other);
      CommonOps_DDRM.subtractEquals(change, lost);
      double matters = ownRate(moving, there, other) - own - known.worth(change);
      double size = 1 + Math.abs(own) + CommonOps_DDRM.elementMaxAbs(lost);
      if (!(Math.abs(matters) <= ROUNDING * size) || !known.isOne()) {
        return Optional.empty();
      }
    }
    double turned = varies || ask.isPresent() ? sign : 1;
    return known
        .range(lost)
        .map(
            range -> {
              // greatest of a goal: above, the multipliers that give least
              double above = own - range.greatest();
              double below = own - range.least();
              return new Sides(turned * below + 0.0, turned * above + 0.0);
            })
        .filter(sides -> Double.isFinite(sides.below()) && Double.isFinite(sides.above()));
  }

  private double ownRate(DualDevice moving, DualEquations there, double[] at) {
    if (ask.isEmpty()) {
      return 0;
    }
    List<Dual> all = new ArrayList<>();
    for (double force : at) {
      all.add(Dual.of(force));
    }
    return sign * new DualReader(moving, there, all).read(ask.get()).orElseThrow().rate();
  }

  /** Rates at which equations and active conditions are missed, forces and number held. */
  private DMatrixRMaj losses(
      DualDevice moving, DualEquations there, List<Condition> conditions, double[] at) {
    DMatrixRMaj all = new DMatrixRMaj(there.rows() + active.size(), 1);
    List<DualAction> loads = varied.loads(moving, there.given, Dual.of(number));
    CommonOps_DDRM.insert(there.imbalance(at, loads), all, 0, 0);
    List<Dual> values = new ArrayList<>();
    for (int column = 0; column < at.length; column++) {
      values.add(Dual.of(at[column] * there.unit(column)));
    }
    for (int k = 0; k < active.size(); k++) {
      Condition one = conditions.get(active.get(k));
      all.set(there.rows() + k, 0, one.at(values, factor()).rate() / one.size());
    }
    return all;
  }
}
