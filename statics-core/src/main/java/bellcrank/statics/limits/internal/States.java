package bellcrank.statics.limits.internal;

import bellcrank.statics.equilibrium.internal.ForceSpace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The states that a device can be in: forces that balance its loads and keep what every part can
 * give. Written in the few forces that statics leaves free, f = f₀ + λ·f₁ + N·z, with all forces
 * divided by one size so that the numbers are of order one.
 */
public final class States {

  /** Share of the loads that may be left over where equations count as fulfilled. */
  static final double BALANCE = 1e-9;

  /** Sums of multiples below this are rounding. */
  static final double ROUNDING = 1e-13;

  /** Most programs that one search may solve. */
  private static final int MOST_PROGRAMS = 3000;

  /** Relative gap at which a search over branches ends. */
  private static final double GAP = 1e-9;

  /** Share of the loads by which the condition of a sinking base may be missed. */
  private static final double SINKING = 1e-9;

  private final ForceSpace space;
  private final PartBounds parts;
  private final double scale;
  private final int columns;
  private final double[][] free;
  private final double[] fixed;
  private final double[] varied;
  private final double least;
  private final double greatest;
  private final boolean varies;

  /** Right side of the loads that the number multiplies, by equations; empty if nothing varies. */
  private final double[] variedLoads;

  /** Equations that no force takes part in: they fix the number, or cannot be fulfilled. */
  private final List<double[]> conditions = new ArrayList<>();

  private final List<Bound> extra;

  private States(
      ForceSpace space, PartBounds parts, Travel loads, double scale, List<Bound> extra) {
    this.space = space;
    this.parts = parts;
    this.scale = scale;
    this.extra = extra;
    columns = space.assembly().columns();
    free = new double[space.freedom()][];
    for (int k = 0; k < free.length; k++) {
      free[k] = space.free(k);
    }
    varies = loads.varies();
    variedLoads = loads.varied;
    least = loads.least;
    greatest = loads.greatest;
    double[] ofFixed = space.turned(loads.fixed);
    double[] ofVaried = varies ? space.turned(loads.varied) : new double[space.rows()];
    for (int k = 0; k < space.conditions(); k++) {
      conditions.add(
          new double[] {space.leftOf(ofVaried, k) / scale, space.leftOf(ofFixed, k) / scale});
    }
    fixed = divided(space.responseTo(ofFixed));
    varied = divided(space.responseTo(ofVaried));
  }

  /**
   * The states of a device.
   *
   * @param space all forces that balance loads
   * @param parts what the parts can give
   * @param loads the loads
   * @param scale size of the loads in N, above 0
   */
  public static States of(ForceSpace space, PartBounds parts, Travel loads, double scale) {
    return new States(space, parts, loads, scale, List.of());
  }

  private double[] divided(double[] forces) {
    for (int j = 0; j < forces.length; j++) {
      forces[j] /= scale;
    }
    return forces;
  }

  int variables() {
    return free.length + (varies ? 1 : 0);
  }

  /** A sum of multiples of the forces, as multiples of the variables; last the constant. */
  private double[] reduced(int[] of, double[] multiples) {
    double[] row = new double[variables() + 1];
    for (int k = 0; k < of.length; k++) {
      if (multiples[k] != 0) {
        addTo(row, of[k], multiples[k]);
      }
    }
    tidy(row);
    return row;
  }

  private void add(Program program, Bound bound, double slack) {
    double[] row = reduced(bound.columns, bound.multiples);
    double limit = bound.limit / scale - row[row.length - 1] + slack;
    program.atMost(Arrays.copyOf(row, row.length - 1), limit);
  }

  /** The program without what branches add; empty of variables where equations cannot hold. */
  Program program(double slack) {
    Program program = new Program(variables());
    for (Bound bound : parts.bounds()) {
      if (!bound.implied || slack > 0) {
        add(program, bound, slack);
      }
    }
    for (Bound bound : extra) {
      add(program, bound, slack);
    }
    for (SinkingBase base : parts.sinking()) {
      for (Bound cut : base.first()) {
        add(program, cut, slack);
      }
    }
    for (double[] condition : conditions) {
      if (Math.abs(condition[0]) > BALANCE) {
        double[] row = new double[variables()];
        row[free.length] = condition[0];
        program.equal(row, -condition[1]);
      }
    }
    if (varies) {
      numberBetween(program);
    }
    return program;
  }

  private void numberBetween(Program program) {
    double[] row = new double[variables()];
    row[free.length] = 1;
    if (greatest < Double.POSITIVE_INFINITY) {
      program.atMost(row, greatest);
    }
    if (least > Double.NEGATIVE_INFINITY) {
      double[] negative = new double[variables()];
      negative[free.length] = -1;
      program.atMost(negative, -least);
    }
  }

  /** Whether the loads, as far as they do not vary, can be balanced by forces of any size. */
  public boolean balanced() {
    for (double[] condition : conditions) {
      if (Math.abs(condition[0]) <= BALANCE && Math.abs(condition[1]) > BALANCE) {
        return false;
      }
    }
    return true;
  }

  /** The same states with one more condition. */
  States with(Bound bound) {
    List<Bound> more = new ArrayList<>(extra);
    more.add(bound);
    return new States(this, more);
  }

  /** The same states, as far as some forces add up to the size of the loads. */
  public States withTotal(List<Integer> of) {
    int[] summed = of.stream().mapToInt(Integer::intValue).toArray();
    double[] up = new double[summed.length];
    double[] down = new double[summed.length];
    Arrays.fill(up, 1);
    Arrays.fill(down, -1);
    return with(new Bound(-1, Bound.Kind.PART, 0, scale, summed, up))
        .with(new Bound(-1, Bound.Kind.PART, 0, -scale, summed, down));
  }

  private States(States of, List<Bound> extra) {
    this(of, extra, of.fixed, of.varied, of.varies);
    conditions.addAll(of.conditions);
  }

  private States(States of, List<Bound> extra, double[] forces, double number) {
    this(of, extra, forces, new double[forces.length], false);
    for (double[] condition : of.conditions) {
      conditions.add(new double[] {0, condition[1] + number * condition[0]});
    }
  }

  private States(States of, List<Bound> extra, double[] fixed, double[] varied, boolean varies) {
    space = of.space;
    parts = of.parts;
    scale = of.scale;
    columns = of.columns;
    free = of.free;
    least = of.least;
    greatest = of.greatest;
    this.fixed = fixed;
    this.varied = varied;
    this.varies = varies;
    this.extra = extra;
    variedLoads = of.variedLoads;
  }

  /** The states of no loads that may be multiplied by any number: what can be locked in. */
  States lockedIn() {
    return of(space, parts.cone(), Travel.fixed(new double[space.rows()]), 1);
  }

  /** The states at one number of the varied loads. */
  States at(double number) {
    double[] forces = fixed.clone();
    for (int j = 0; j < columns; j++) {
      forces[j] += number * varied[j];
    }
    return new States(this, extra, forces, number);
  }

  /**
   * Loads that drive a device beyond a goal: those that vary, in the sense of the goal.
   *
   * @return their power for each velocity by equations; empty if nothing varies
   */
  public double[] driving(Goal goal) {
    double[] drive = goal.number == 0 ? new double[0] : variedLoads.clone();
    for (int i = 0; i < drive.length; i++) {
      drive[i] *= -goal.number;
    }
    return drive;
  }

  PartBounds parts() {
    return parts;
  }

  /** All forces that balance loads. */
  public ForceSpace space() {
    return space;
  }

  double scale() {
    return scale;
  }

  int columns() {
    return columns;
  }

  /** Multiples of the variables in a goal, and its constant. */
  double[] objective(Goal goal) {
    double[] row = new double[variables() + 1];
    for (int j = 0; j < columns; j++) {
      double multiple = goal.forces[j];
      if (multiple != 0) {
        addTo(row, j, multiple);
      }
    }
    tidy(row);
    if (varies) {
      row[free.length] += goal.number / scale;
    }
    return row;
  }

  private void addTo(double[] row, int column, double multiple) {
    for (int z = 0; z < free.length; z++) {
      row[z] += multiple * free[z][column];
    }
    if (varies) {
      row[free.length] += multiple * varied[column];
    }
    row[row.length - 1] += multiple * fixed[column];
  }

  /** Takes sums that are rounding for zeros; the constant stays. */
  private static void tidy(double[] row) {
    for (int z = 0; z < row.length - 1; z++) {
      row[z] = Math.abs(row[z]) < ROUNDING ? 0 : row[z];
    }
  }

  /** Forces of the variables, divided by the size. */
  double[] forces(double[] x) {
    double[] f = fixed.clone();
    for (int z = 0; z < free.length; z++) {
      for (int j = 0; j < columns; j++) {
        f[j] += x[z] * free[z][j];
      }
    }
    if (varies) {
      for (int j = 0; j < columns; j++) {
        f[j] += x[free.length] * varied[j];
      }
    }
    return f;
  }

  double[] unscaled(double[] forces) {
    double[] f = forces.clone();
    for (int j = 0; j < f.length; j++) {
      f[j] *= scale;
    }
    return f;
  }

  double number(double[] x) {
    return varies ? x[free.length] : 0;
  }

  /**
   * Makes a goal greatest over all states.
   *
   * @param goal what is made greatest
   * @return how it comes out
   */
  public Extreme greatest(Goal goal) {
    return greatest(goal, 0);
  }

  /** The same with every condition widened by a share of the loads. */
  public Extreme greatest(Goal goal, double slack) {
    if (!balanced()) {
      return Extreme.without(Extreme.Kind.NONE);
    }
    return parts.branches().isEmpty()
        ? greatestOfOne(goal, slack)
        : new BranchSearch(this, goal, slack, MOST_PROGRAMS, GAP).run();
  }

  /** The same where one program says it all. */
  private Extreme greatestOfOne(Goal goal, double slack) {
    double[] objective = objective(goal);
    double constant = objective[objective.length - 1];
    Optimum best = solve(program(slack), Arrays.copyOf(objective, objective.length - 1));
    return switch (best.kind) {
      case FOUND ->
          Extreme.found(
              (best.value + constant) * scale, 0, unscaled(forces(best.x)), number(best.x));
      case INFEASIBLE -> Extreme.without(Extreme.Kind.NONE);
      case UNBOUNDED -> Extreme.without(Extreme.Kind.UNBOUNDED);
      case FAILED -> Extreme.open();
    };
  }

  /** Adds cuts until the condition of every sinking base is kept, and solves. */
  Optimum solve(Program program, double[] objective) {
    Optimum best = Simplex.maximize(program, objective);
    boolean cut = best.isFound() && !parts.sinking().isEmpty();
    for (int round = 0; cut && round < 200; round++) {
      cut = false;
      double[] forces = unscaled(forces(best.x));
      for (SinkingBase base : parts.sinking()) {
        for (Bound bound : base.cuts(forces, SINKING * scale)) {
          add(program, bound, 0);
          cut = true;
        }
      }
      if (cut) {
        best = Simplex.maximize(program, objective);
        cut = best.isFound();
      }
    }
    return best;
  }

  void addTo(Program program, List<Bound> bounds, double slack) {
    for (Bound bound : bounds) {
      add(program, bound, slack);
    }
  }
}
