package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Weight;
import bellcrank.statics.limits.PlainForce.Push;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The second opinion on states: all equations of balance of all bodies, moments about the world's
 * origin, as they stand, with every force of {@link PlainForce} a variable; another library makes a
 * sum greatest. Also the dual of that program, written out and solved as one of its own: any of its
 * points proves that no state goes beyond its value.
 */
final class PlainStates {

  /** How a program comes out. */
  enum Kind {
    FOUND,
    NONE,
    UNBOUNDED,
    UNSURE
  }

  /** What was found. */
  static final class Best {
    final Kind kind;
    final double value;
    final List<Double> x;

    Best(Kind kind, double value, List<Double> x) {
      this.kind = kind;
      this.value = value;
      this.x = x;
    }
  }

  private final Device device;
  private final List<PlainForce> forces;
  private final Map<String, Integer> firstRow = new HashMap<>();
  private final List<double[]> columns = new ArrayList<>();
  private final double[] fixed;
  private final double[] varied;
  private final boolean varies;
  private final double scale;
  private double numberFrom = Double.NEGATIVE_INFINITY;
  private double numberTo = Double.POSITIVE_INFINITY;

  private PlainStates(Device device, double friction, Set<String> variedLoads) {
    this.device = device;
    forces = PlainParts.of(device, friction);
    device.members().forEach(member -> firstRow.put(member.name(), 3 * firstRow.size()));
    varies = !variedLoads.isEmpty();
    fixed = new double[3 * firstRow.size()];
    varied = new double[fixed.length];
    for (PlainForce force : forces) {
      double[] column = new double[fixed.length];
      force.pushes().forEach(push -> add(push, column));
      columns.add(column);
    }
    double sum = 0;
    for (Load load : device.loads()) {
      Push push = push(load);
      add(push, variedLoads.contains(load.name()) ? varied : fixed);
      sum += push.force().norm();
    }
    scale = sum > 0 ? sum : 1;
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] /= scale;
      varied[i] /= scale;
    }
  }

  static PlainStates of(Device device) {
    return new PlainStates(device, 1, Set.of());
  }

  static PlainStates of(Device device, double friction, Set<String> varied) {
    return new PlainStates(device, friction, varied);
  }

  /** The same where the number by which loads are varied lies between ends. */
  PlainStates between(double from, double to) {
    numberFrom = from;
    numberTo = to;
    return this;
  }

  private Push push(Load load) {
    if (load instanceof Force force) {
      return new Push(force.body(), device.point(force.at()), force.vector());
    }
    Weight weight = (Weight) load;
    return new Push(
        weight.body(),
        device.point(weight.at().orElseThrow()),
        device.gravity().times(weight.mass()));
  }

  private void add(Push push, double[] column) {
    Integer row = firstRow.get(push.body());
    if (row == null) {
      return; // the ground takes anything
    }
    column[row] += push.force().x();
    column[row + 1] += push.force().y();
    column[row + 2] += push.momentAboutOrigin() / device.size();
  }

  /** Size of the loads in N, or 1. */
  double scale() {
    return scale;
  }

  /** Multiples of the variables in an answer: of a part, what it reads. */
  double[] reading(String part, String what, double multiple) {
    double[] goal = new double[forces.size()];
    for (int j = 0; j < goal.length; j++) {
      PlainForce force = forces.get(j);
      goal[j] = force.part().equals(part) ? multiple * force.reads(what) : 0;
    }
    return goal;
  }

  double[] nothing() {
    return new double[forces.size()];
  }

  /** Makes a sum of forces in N greatest. */
  Best greatest(double[] goal) {
    Best best = judged(goal, 0);
    return new Best(best.kind, best.value * scale, best.x);
  }

  /** Makes the number greatest that varies loads, or its opposite. */
  Best greatestNumber(int sign) {
    return judged(nothing(), sign);
  }

  /**
   * No outcome is believed without its proof: of no state, multiples of the equations that
   * contradict one another; of no end, a direction in which states go on; of a greatest value, the
   * dual.
   */
  private Best judged(double[] goal, double number) {
    Best state = primal(nothing(), 0, false);
    if (state.kind != Kind.FOUND) {
      Best contradiction = dual(nothing(), 0, true);
      boolean proved = contradiction.kind == Kind.FOUND && contradiction.value < -1e-9;
      return new Best(proved ? Kind.NONE : Kind.UNSURE, 0, List.of());
    }
    Best ray = primal(goal, number, true);
    if (ray.kind == Kind.FOUND && ray.value > 1e-7) {
      return new Best(Kind.UNBOUNDED, 0, ray.x);
    }
    Best best = primal(goal, number, false);
    Best dual = dual(goal, number, false);
    boolean proved =
        best.kind == Kind.FOUND
            && dual.kind == Kind.FOUND
            && Math.abs(best.value - dual.value) <= 1e-8 * Math.max(1, Math.abs(best.value));
    return proved ? best : new Best(Kind.UNSURE, 0, List.of());
  }

  /** The program; or that of a direction of states, of forces of at most one. */
  private Best primal(double[] goal, double number, boolean ray) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> x = new ArrayList<>();
    for (int j = 0; j < forces.size(); j++) {
      Variable variable = model.newVariable("x" + j).weight(goal[j]);
      within(variable, forces.get(j).anySign() ? -1 : 0, ray);
      x.add(forces.get(j).anySign() ? variable : variable.lower(0));
    }
    List<double[]> all = new ArrayList<>(columns);
    if (varies) {
      Variable variable = model.newVariable("number").weight(number);
      within(variable, -1, ray);
      if (numberFrom > Double.NEGATIVE_INFINITY) {
        variable.lower(ray ? 0 : numberFrom);
      }
      if (numberTo < Double.POSITIVE_INFINITY) {
        variable.upper(ray ? 0 : numberTo);
      }
      x.add(variable);
      all.add(varied);
    }
    for (int i = 0; i < fixed.length; i++) {
      Expression row = model.newExpression("row " + i).level(ray ? 0 : -fixed[i]);
      for (int j = 0; j < x.size(); j++) {
        set(row, x.get(j), all.get(j)[i]);
      }
    }
    return best(model.maximise(), x.size());
  }

  private static void within(Variable variable, int from, boolean one) {
    if (one) {
      variable.lower(from).upper(1);
    }
  }

  /** The least bound on a sum of forces in N that multiples of the equations prove. */
  Best bound(double[] goal) {
    Best best = dual(goal, 0, false);
    return new Best(best.kind, best.value * scale, best.x);
  }

  /** The least bound on the number, or on its opposite. */
  Best boundOfNumber(int sign) {
    return dual(nothing(), sign, false);
  }

  /** Multiples y of the equations, least −y·fixed with y·column ≥ goal, equal for any sign. */
  private Best dual(double[] goal, double number, boolean ray) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> y = new ArrayList<>();
    for (int i = 0; i < fixed.length; i++) {
      Variable variable = model.newVariable("y" + i).weight(-fixed[i]);
      within(variable, -1, ray);
      y.add(variable);
    }
    for (int j = 0; j < forces.size(); j++) {
      Expression row = model.newExpression("force " + j);
      row = forces.get(j).anySign() ? row.level(goal[j]) : row.lower(goal[j]);
      for (int i = 0; i < fixed.length; i++) {
        set(row, y.get(i), columns.get(j)[i]);
      }
    }
    if (varies) {
      Expression row = model.newExpression("number").level(number);
      for (int i = 0; i < fixed.length; i++) {
        set(row, y.get(i), varied[i]);
      }
    }
    return best(model.minimise(), fixed.length);
  }

  /** By how much multiples of the equations miss what a proof of a bound asks. */
  double missOfProof(double[] goal, double number, List<Double> y) {
    double worst = varies ? Math.abs(sum(varied, y) - number) : 0;
    for (int j = 0; j < forces.size(); j++) {
      double miss = goal[j] - sum(columns.get(j), y);
      worst = Math.max(worst, forces.get(j).anySign() ? Math.abs(miss) : miss);
    }
    double size = 1;
    for (double one : y) {
      size = Math.max(size, Math.abs(one));
    }
    return worst / size;
  }

  /** What multiples of the equations prove; for a sum of forces in N, divided by the scale. */
  double proved(List<Double> y) {
    return -sum(fixed, y);
  }

  private static double sum(double[] column, List<Double> y) {
    double sum = 0;
    for (int i = 0; i < column.length; i++) {
      sum += column[i] * y.get(i);
    }
    return sum;
  }

  private static void set(Expression row, Variable variable, double value) {
    if (Math.abs(value) > 1e-15) {
      row.set(variable, value);
    }
  }

  private static Best best(Optimisation.Result result, int count) {
    Optimisation.State state = result.getState();
    if (state.isOptimal()) {
      List<Double> x = new ArrayList<>();
      for (int j = 0; j < count; j++) {
        x.add(result.doubleValue(j));
      }
      return new Best(Kind.FOUND, result.getValue(), x);
    }
    Kind kind =
        switch (state) {
          case INFEASIBLE -> Kind.NONE;
          case UNBOUNDED -> Kind.UNBOUNDED;
          default -> Kind.UNSURE;
        };
    return new Best(kind, 0, List.of());
  }
}
