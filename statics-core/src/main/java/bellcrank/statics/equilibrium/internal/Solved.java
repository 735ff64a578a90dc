package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.List;
import java.util.Optional;

/**
 * A device solved at a pose under a case: numbers of the unknowns and everything needed to read
 * answers from them. Not changed after construction.
 */
public final class Solved implements SolvedForces {

  /** Share by which an answer may change under a self-stress and still count as determined. */
  private static final double DETERMINED_TOLERANCE = 1e-8;

  final Assembly assembly;
  final Placements placements;
  final Actions actions;
  final LoadCase loadCase;
  private final LinearSolution solution;
  private final double residual;
  private final double loadScale;
  private final double forceScale;

  private Solved(Device device, LoadCase loadCase, Pose pose) {
    this.loadCase = loadCase;
    assembly = Assembly.of(device);
    placements = assembly.placements();
    actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(placements, loadCase, loads);
    Optional<LinearSolution> small =
        SmallSystem.fits(assembly) ? SmallSystem.solve(assembly, actions, loads) : Optional.empty();
    solution = small.isPresent() ? small.get() : inOrder(loads);
    loadScale = loads.scale;
    double scale = loadScale;
    for (double value : solution.x()) {
      scale = Math.max(scale, Math.abs(value));
    }
    forceScale = scale;
    residual = Residual.of(actions, solution.x(), loads, assembly.memberCount(), scale);
  }

  private LinearSolution inOrder(Wrenches loads) {
    double[] centre = new double[2 * assembly.memberCount()];
    MomentCentres.choose(assembly, actions, centre);
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, centre);
    double[] b = new double[equations.rows];
    loads.rightSide(assembly.memberCount(), centre, b);
    double zero = assembly.scale().zero();
    return LinearAnalysis.solve(equations, b, loads.scale, zero, equations.columns);
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

  private Solved(Assembly assembly, LoadCase loadCase, Pose pose, double[] x) {
    this.loadCase = loadCase;
    this.assembly = assembly;
    placements = assembly.placements();
    actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(placements, loadCase, loads);
    solution = new LinearSolution(x, true, List.of(), List.of(), 1);
    loadScale = loads.scale;
    double scale = loadScale;
    for (double value : x) {
      scale = Math.max(scale, Math.abs(value));
    }
    forceScale = scale;
    residual = Residual.of(actions, x, loads, assembly.memberCount(), scale);
  }

  /**
   * A device with forces that are known already, the friction couples of pins among them.
   *
   * @param device the device
   * @param loadCase factors of its loads
   * @param pose where its bodies are
   * @param forces by unknowns of {@link Assembly#withDryPins}; couples divided by the size
   * @return the device with these forces, all of which count as fixed
   */
  public static Solved with(Device device, LoadCase loadCase, Pose pose, double[] forces) {
    return new Solved(Assembly.withDryPins(device), loadCase, pose, forces.clone());
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  @Override
  public Placements placements() {
    return placements;
  }

  @Override
  public Actions actions() {
    return actions;
  }

  @Override
  public LoadCase loadCase() {
    return loadCase;
  }

  @Override
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
    return loadScale;
  }
}
