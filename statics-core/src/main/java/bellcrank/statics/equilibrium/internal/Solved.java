package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.List;

/**
 * A device solved at a pose under a case: numbers of the unknowns and everything needed to read
 * answers from them. Not changed after construction.
 */
public final class Solved {

  /** Share by which an answer may change under a self-stress and still count as determined. */
  private static final double DETERMINED_TOLERANCE = 1e-8;

  final Assembly assembly;
  final Placements placements;
  final Actions actions;
  final Wrenches loads;
  final Equations equations;
  final LoadCase loadCase;
  private final LinearSolution solution;
  private final double residual;
  private final double forceScale;

  private Solved(Device device, LoadCase loadCase, Pose pose) {
    this.loadCase = loadCase;
    assembly = Assembly.of(device);
    placements = assembly.placements();
    actions = assembly.actions();
    assembly.evaluate(placements, actions);
    loads = new Wrenches(assembly.bodyCount());
    MomentCentres.choose(assembly, actions, loads.centreX, loads.centreY);
    if (!pose.isDrawn()) {
      assembly.place(placements, pose);
      assembly.evaluate(placements, actions);
      moveCentres(placements, assembly.memberCount(), loads.centreX, loads.centreY);
    }
    equations = new Equations(assembly, actions);
    equations.fillForces(actions, loads.centreX, loads.centreY);
    assembly.load(placements, loadCase, loads);
    double[] b = new double[equations.rows];
    equations.rightSide(loads, b);
    double zero = assembly.scale().zero();
    solution = LinearAnalysis.solve(equations, b, loads.scale, zero, equations.columns);
    double scale = loads.scale;
    for (double value : solution.x()) {
      scale = Math.max(scale, Math.abs(value));
    }
    forceScale = scale;
    residual = Residual.of(assembly, actions, placements, loadCase, solution.x(), scale);
  }

  /**
   * Solves a device.
   *
   * @param device the device
   * @param loadCase factors of its loads
   * @param pose where its bodies are
   * @return the solved device
   */
  public static Solved of(Device device, LoadCase loadCase, Pose pose) {
    return new Solved(device, loadCase, pose);
  }

  /** Takes the material points about which moments are written along with the bodies. */
  static void moveCentres(Placements at, int members, double[] x, double[] y) {
    for (int body = 0; body < members; body++) {
      double qx = x[body];
      double qy = y[body];
      x[body] = at.x(body, qx, qy);
      y[body] = at.y(body, qx, qy);
    }
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  /** Value of an unknown: N, or N·m divided by the size for couples. */
  public double unknown(int column) {
    return solution.x()[column];
  }

  /** Whether the equations can hold. */
  public boolean balanced() {
    return solution.balanced();
  }

  /** Whether forces and sought efforts leave no motion free. */
  public boolean isHeld() {
    return solution.motions().isEmpty();
  }

  /** Number of independent force changes that statics does not see. */
  public int redundancy() {
    return solution.selfStresses().size();
  }

  /** Whether an unknown is fixed by statics. */
  public boolean determined(int column) {
    for (double[] stress : solution.selfStresses()) {
      if (Math.abs(stress[column]) > DETERMINED_TOLERANCE) {
        return false;
      }
    }
    return true;
  }

  /** Whether a sum of multiples of the unknowns is fixed by statics. */
  boolean determined(double[] multiples) {
    // multiples are of unit forces: what is less than one of them is rounding
    double size = 1;
    for (double multiple : multiples) {
      size += Math.abs(multiple);
    }
    for (double[] stress : solution.selfStresses()) {
      double change = 0;
      for (int j = 0; j < multiples.length; j++) {
        change += multiples[j] * stress[j];
      }
      if (Math.abs(change) > DETERMINED_TOLERANCE * size) {
        return false;
      }
    }
    return true;
  }

  boolean isDeterminate() {
    return solution.selfStresses().isEmpty();
  }

  /** Motions that the forces do not hold, as velocities by rows. */
  List<double[]> motions() {
    return solution.motions();
  }

  /** Estimate of the condition of the scaled equations, 1 or more. */
  public double condition() {
    return solution.condition();
  }

  /**
   * Largest sum of forces or of moments over the size that is left on a body, relative to the
   * largest force.
   */
  public double residual() {
    return residual;
  }

  /** Sum of the sizes of the loads, or the largest unknown if that is larger, in N. */
  public double forceScale() {
    return forceScale;
  }

  /** Sum of the sizes of the loads in N. */
  public double loadScale() {
    return loads.scale;
  }
}
