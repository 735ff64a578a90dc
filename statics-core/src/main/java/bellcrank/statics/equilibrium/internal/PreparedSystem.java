package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.Arrays;

/**
 * The order of solution of a device, good for any pose: found from coefficients at a placement that
 * fits nothing, where only what is always zero is zero. Not changed after construction.
 */
public final class PreparedSystem {

  private final Assembly assembly;
  private final Order order;

  /** Moment centres of the members as drawn points: they move with the members. */
  private final double[] centre;

  /**
   * Prepares a device.
   *
   * @param device the device
   */
  public PreparedSystem(Device device) {
    assembly = Assembly.of(device);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    centre = new double[2 * assembly.memberCount()];
    MomentCentres.choose(assembly, actions, centre);
    placements.scatter();
    assembly.evaluate(placements, actions);
    double[] moved = new double[centre.length];
    moveCentres(placements, moved);
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, moved);
    order = Order.of(new Pattern(equations, assembly.scale().zero(), equations.columns));
  }

  private void moveCentres(Placements placements, double[] moved) {
    for (int body = 0; body < assembly.memberCount(); body++) {
      double qx = centre[2 * body];
      double qy = centre[2 * body + 1];
      moved[2 * body] = placements.x(body, qx, qy);
      moved[2 * body + 1] = placements.y(body, qx, qy);
    }
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  /** Whether there are as many equations as unknowns and each can have its own. */
  public boolean isSquare() {
    return order.isSquare();
  }

  /** Size of the largest block of unknowns that must be solved together. */
  public int largestBlock() {
    return order.largestBlock;
  }

  /** Storage for solving; one for each thread. */
  public Storage storage() {
    return new Storage();
  }

  /** Numbers of one solve, used again and again. */
  public final class Storage implements SolvedForces {

    private final Placements placements = assembly.placements();
    private final Actions actions = assembly.actions();
    private final Wrenches loads = new Wrenches(assembly.bodyCount());
    private final Wrenches left = new Wrenches(assembly.bodyCount());
    private final double[] moved = new double[centre.length];
    private final OrderedRows rows = new OrderedRows(order);
    private final BlockSolver solver = new BlockSolver(rows, assembly.scale().zero());
    private final FillPlan plan;
    private final double[] b = new double[assembly.rows()];
    private final double[] x = new double[assembly.columns()];
    private LoadCase solvedCase = LoadCase.ALL_LOADS;

    private Storage() {
      assembly.evaluate(placements, actions);
      plan = new FillPlan(assembly, actions, centre, rows);
    }

    /**
     * Solves at a pose under a case.
     *
     * @param pose where the bodies are
     * @param loadCase factors of the loads
     * @return false if the equations are singular there
     */
    public boolean solve(Pose pose, LoadCase loadCase) {
      assembly.place(placements, pose);
      return solve(loadCase);
    }

    /**
     * Solves where a closure of the same device stands.
     *
     * @param closure the closure
     * @param loadCase factors of the loads
     * @return false if the equations are singular there
     */
    public boolean solve(Closure closure, LoadCase loadCase) {
      placements.copy(closure.placements());
      return solve(loadCase);
    }

    private boolean solve(LoadCase loadCase) {
      if (!order.isSquare()) {
        return false;
      }
      moveCentres(placements, moved);
      plan.fill(placements, actions, moved);
      return solver.factor() && again(loadCase);
    }

    /**
     * Solves under another case where a solve was possible last; the factors of that are used
     * again.
     *
     * @param loadCase factors of the loads
     * @return false if a force is beyond all bounds
     */
    public boolean again(LoadCase loadCase) {
      solvedCase = loadCase;
      assembly.load(placements, loadCase, loads);
      if (loads.scale == 0) {
        Arrays.fill(x, 0);
        return true;
      }
      loads.rightSide(assembly.memberCount(), moved, b);
      solver.solve(b, x);
      boolean finite = true;
      for (double value : x) {
        finite &= Math.abs(value) < Double.MAX_VALUE;
      }
      return finite;
    }

    @Override
    public Placements placements() {
      return placements;
    }

    /** The unit forces; all of them are as in the pose only after {@link #evaluate}. */
    @Override
    public Actions actions() {
      return actions;
    }

    @Override
    public LoadCase loadCase() {
      return solvedCase;
    }

    /** Sum of the sizes of the loads that were solved for last, in N. */
    double loads() {
      return loads.scale;
    }

    /** Works out all unit forces in the pose; a solve leaves out those that it knows. */
    void evaluate() {
      assembly.evaluate(placements, actions);
    }

    @Override
    public double unknown(int column) {
      return x[column];
    }

    /**
     * Largest force after a solve, relative to the loads: where it is very large the shape is next
     * to one that cannot be solved.
     *
     * @return 0 or more; infinite if there are no loads but forces
     */
    public double amplification() {
      double largest = 0;
      for (double value : x) {
        largest = Math.max(largest, Math.abs(value));
      }
      return largest == 0 ? 0 : largest / loads.scale;
    }

    /** Residual of the last solve, relative to the largest force; found when asked for. */
    public double residual() {
      double forceScale = loads.scale;
      for (double value : x) {
        forceScale = Math.max(forceScale, Math.abs(value));
      }
      assembly.evaluate(placements, actions);
      left.copy(loads);
      return Residual.of(actions, x, left, assembly.memberCount(), forceScale);
    }
  }
}
