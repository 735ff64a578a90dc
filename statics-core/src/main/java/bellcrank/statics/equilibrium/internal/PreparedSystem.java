package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;

/**
 * The order of solution of a device, good for any pose: found from coefficients at a placement that
 * fits nothing, where only what is always zero is zero. Not changed after construction.
 */
public final class PreparedSystem {

  private final Assembly assembly;
  private final Order order;
  private final double[] centreX;
  private final double[] centreY;

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
    centreX = new double[assembly.bodyCount()];
    centreY = new double[assembly.bodyCount()];
    MomentCentres.choose(assembly, actions, centreX, centreY);
    placements.scatter();
    assembly.evaluate(placements, actions);
    double[] x = centreX.clone();
    double[] y = centreY.clone();
    Solved.moveCentres(placements, assembly.memberCount(), x, y);
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, x, y);
    order = Order.of(new Pattern(equations, assembly.scale().zero(), equations.columns));
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
  public final class Storage {

    private final Placements placements = assembly.placements();
    private final Actions actions = assembly.actions();
    private final Wrenches loads = new Wrenches(assembly.bodyCount());
    private final Wrenches left = new Wrenches(assembly.bodyCount());
    private final Equations equations = new Equations(assembly, actions);
    private final BlockSolver solver = new BlockSolver(order, equations);
    private final double[] b = new double[assembly.rows()];
    private final double[] x = new double[assembly.columns()];
    private double residual;

    private Storage() {}

    /**
     * Solves at a pose under a case.
     *
     * @param pose where the bodies are
     * @param loadCase factors of the loads
     * @return false if the equations are singular there
     */
    public boolean solve(Pose pose, LoadCase loadCase) {
      if (!order.isSquare()) {
        return false;
      }
      assembly.place(placements, pose);
      assembly.evaluate(placements, actions);
      System.arraycopy(centreX, 0, loads.centreX, 0, centreX.length);
      System.arraycopy(centreY, 0, loads.centreY, 0, centreY.length);
      if (!pose.isDrawn()) {
        Solved.moveCentres(placements, assembly.memberCount(), loads.centreX, loads.centreY);
      }
      equations.fillForces(actions, loads.centreX, loads.centreY);
      assembly.load(placements, loadCase, loads);
      equations.rightSide(loads, b);
      if (!solver.factor()) {
        return false;
      }
      solver.solve(b, x);
      double scale = loads.scale;
      for (double value : x) {
        scale = Math.max(scale, Math.abs(value));
      }
      if (!(scale < Double.MAX_VALUE)) {
        return false;
      }
      moveToMiddle();
      residual = scale > 0 ? Residual.of(assembly, actions, left, x, scale) : 0;
      return true;
    }

    /** Moments of the loads about the device's middle, from those about the moment centres. */
    private void moveToMiddle() {
      for (int body = 0; body < b.length && body < left.fx.length; body++) {
        left.fx[body] = loads.fx[body];
        left.fy[body] = loads.fy[body];
        left.moment[body] =
            loads.moment[body]
                + loads.centreX[body] * loads.fy[body]
                - loads.centreY[body] * loads.fx[body];
      }
    }

    /** Value of an unknown after a solve: N, or N·m divided by the size for couples. */
    public double unknown(int column) {
      return x[column];
    }

    /** Residual of the last solve, relative to the largest force. */
    public double residual() {
      return residual;
    }
  }
}
